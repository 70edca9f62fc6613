import { Link } from '@tanstack/react-router';
import { SHELL_WORDS, WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import { useCallback, useEffect, useMemo, type ReactNode } from 'react';
import { useWorkbench } from '../../state/index.ts';
import { weighedHere } from '../../state/weighed-here.ts';
import { weightsId } from '../../state/weights-id.ts';
import { productFacts } from './product-facts.ts';
import { SheetView } from './sheet-view.tsx';
import { typedFacts, typedWheel } from './typed-facts.ts';
import { useWeightsSheet } from './use-weights-sheet.ts';
import './weights.css';
import './verdicts.css';
import './paper.css';

const words = WEIGHTS_PAGE_WORDS;

/** Weights of the product that is open, against its own brief and design. */
export function ProductWeightsPage({ id }: { readonly id: string }): ReactNode {
  const desk = useWeightsSheet(id);
  const state = useWorkbench((one) => one);
  const { brief, candidate, details, isSearching, areDetailsPending } = state;
  const product = useMemo(() => productFacts(state), [brief, candidate, details]);
  const { purpose, typed } = desk.sheet;
  // What the design knows comes a moment after the brief: no verdict flashes up without it.
  const isAwaited = brief.kind === 'sound' && !details && (isSearching || areDetailsPending);
  const isKnown = brief.kind !== 'reading' && !isAwaited;
  const facts = useMemo(() => {
    if (!isKnown) return undefined;
    return product?.facts({ purpose, assay_pct: typed.content_pct }) ?? typedFacts(desk.sheet);
  }, [isKnown, product, purpose, typed]);
  const name = product?.name ?? words.title;
  const card = details?.card;
  const tell = useCallback(
    (count: number) => {
      weighedHere.set({ id, count });
    },
    [id],
  );
  const wheel = product?.wheel;
  return <SheetView {...{ desk, facts, name, card, wheel }} isFree={brief.kind === 'faulty'} onCounted={tell} />;
}

/** Weights without a product: target and limits are typed. */
export function FreeWeightsPage(): ReactNode {
  const id = useMemo(() => weightsId(), []);
  const desk = useWeightsSheet(id);
  const { typed, purpose } = desk.sheet;
  const facts = useMemo(() => typedFacts(desk.sheet), [typed, purpose]);
  const wheel = useMemo(() => typedWheel(typed), [typed]);
  useEffect(() => {
    document.title = `${SHELL_WORDS.title}: ${words.title}`;
  }, []);
  return (
    <main id="page">
      <header className="weights-free-head no-print">
        <h1>{words.noProduct}</h1>
        <Link to="/">{words.toStart}</Link>
      </header>
      <SheetView {...{ desk, facts, wheel }} card={undefined} name={words.noProduct} isFree />
    </main>
  );
}

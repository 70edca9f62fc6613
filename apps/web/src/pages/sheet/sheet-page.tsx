import { SHEET_WORDS } from '@fillwright/words/en';
import { useMemo, type ReactNode } from 'react';
import { NumberDock, OpenNumberProvider } from '../../numbers/index.ts';
import { useWorkbench, type WorkbenchState } from '../../state/index.ts';
import { personName } from '../../state/person.ts';
import { BackPage } from './back/back-page.tsx';
import { FrontPage } from './front/front-page.tsx';
import { pageIdentity } from './page-identity.ts';
import { sheetFacts, type SheetFacts } from './sheet-facts.ts';
import { useBriefHead } from './use-brief-head.ts';
import { usePrintedAt } from './use-printed-at.ts';
import './sheet.css';

/** Setting sheet and limit card of the set-up on the bench, to read and to print. */
export function SheetPage(): ReactNode {
  const state = useWorkbench((one) => one);
  const { brief, candidate, details, areDetailsPending } = state;
  const input = brief.kind === 'sound' ? brief.input : undefined;
  const facts = useMemo(
    () => (input && candidate && details && !areDetailsPending ? sheetFacts(input, candidate, details) : undefined),
    [input, candidate, details, areDetailsPending],
  );
  if (!facts) return <p className="sheet-nothing">{whyNothing(state)}</p>;
  return (
    <OpenNumberProvider>
      <Sheet state={state} facts={facts} />
      <NumberDock />
    </OpenNumberProvider>
  );
}

function whyNothing({ brief, candidate, details, areDetailsPending, isSearching }: WorkbenchState): string {
  const words = SHEET_WORDS;
  if (brief.kind === 'faulty') return words.faulty;
  if (brief.kind === 'reading') return words.noBrief;
  if (!candidate) return isSearching ? words.computing : words.noCandidate;
  return areDetailsPending || !details ? words.computing : words.noPlace;
}

function Sheet({ state, facts }: { readonly state: WorkbenchState; readonly facts: SheetFacts }): ReactNode {
  const { id, save, brief } = state;
  const head = useBriefHead(id, save.kind === 'conflict' ? save.current.version : save.version);
  const at = usePrintedAt();
  const identity = pageIdentity(facts.brief.product.code, {
    ...{ save, head, seed: facts.input.seed },
    files: brief.kind === 'sound' ? brief.files : [],
  });
  const words = SHEET_WORDS;
  return (
    <div className="sheet">
      <div className="sheet-tools no-print">
        <button
          type="button"
          onClick={() => {
            window.print();
          }}
        >
          {words.print}
        </button>
        {id === undefined ? null : <a href={`/products/${id}/fill`}>{words.toBench}</a>}
        <span className="quiet">{words.howToPrint}</span>
      </div>
      <FrontPage facts={facts} identity={identity} />
      <BackPage facts={facts} identity={identity} printed={words.printed({ at, by: personName() })} />
    </div>
  );
}

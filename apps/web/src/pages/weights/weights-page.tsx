import { Link } from '@tanstack/react-router';
import type { WheelOfRevolution } from '@fillwright/engine/weights';
import { exampleWeights, SHELL_WORDS, WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import { useEffect, useMemo, type KeyboardEvent, type ReactNode } from 'react';
import { ConflictPanel, FileButton, saveSentence, useDropFiles } from '../../briefs/index.ts';
import { announce } from '../../shell/announcer.tsx';
import { useWorkbench } from '../../state/index.ts';
import type { WeightsFacts } from '../../state/weights-calls.ts';
import { weightsId } from '../../state/weights-id.ts';
import { Choices } from './choices.tsx';
import { Judged } from './judged.tsx';
import { productFacts } from './product-facts.ts';
import { RawPanel } from './raw-panel.tsx';
import { typedFacts, typedWheel } from './typed-facts.ts';
import { useMarks } from './use-marks.ts';
import { useWeightsAnswer } from './use-weights-answer.ts';
import { useWeightsSheet, type SheetDesk } from './use-weights-sheet.ts';
import './weights.css';

const words = WEIGHTS_PAGE_WORDS;

/** Weights of the product that is open, against its own brief and design. */
export function ProductWeightsPage({ id }: { readonly id: string }): ReactNode {
  const desk = useWeightsSheet(id);
  const state = useWorkbench((one) => one);
  const { brief, candidate, details } = state;
  const product = useMemo(() => productFacts(state), [brief, candidate, details]);
  const { purpose } = desk.sheet;
  const facts = useMemo(() => product?.facts(purpose) ?? typedFacts(desk.sheet), [product, purpose, desk.sheet.typed]);
  const name = product?.name ?? words.title;
  return <Weights {...{ desk, facts, name }} wheel={product?.wheel} isFree={!product} />;
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
      <Weights {...{ desk, facts, wheel }} name={words.noProduct} isFree />
    </main>
  );
}

interface WeightsProps {
  readonly desk: SheetDesk;
  readonly facts: WeightsFacts;
  readonly wheel: WheelOfRevolution | undefined;
  readonly name: string;
  readonly isFree: boolean;
}

function Weights({ desk, facts, wheel, name, isFree }: WeightsProps): ReactNode {
  const { sheet, state, change } = desk;
  const answer = useWeightsAnswer({ sheet, facts, wheel });
  const known = answer === 'broken' ? undefined : answer;
  const marks = useMarks(known?.judgement);
  const take = (files: readonly File[]): void => {
    const [file] = files;
    if (file)
      void file.text().then((text) => {
        change({ weights: text });
        announce(file.name);
      });
  };
  const { isOver, ...drop } = useDropFiles(take);
  const isEmpty = sheet.weights.trim() === '' && sheet.shells.trim() === '';
  const own = wheel && sheet.isRevolution ? wheel : undefined;
  return (
    <div className="weights" data-over={isOver ? '' : undefined} onKeyDown={undoKeys(desk)} {...drop}>
      <Tools desk={desk} isEmpty={isEmpty} onFiles={take} />
      {isOver ? <p className="no-print">{words.drop}</p> : null}
      {state.save.kind === 'conflict' ? (
        <ConflictPanel thing="weights" save={state.save} onResolve={desk.resolve} />
      ) : null}
      <div className="weights-columns">
        <div className="weights-raw no-print">
          <RawPanel part="weights" text={sheet.weights} read={known?.read} marks={marks} change={change} />
          <RawPanel part="shells" text={sheet.shells} read={known?.shellsRead} marks={NO_MARKS} change={change} />
          <h2>{words.asked}</h2>
          <Choices {...{ sheet, change, wheel, isFree }} />
        </div>
        {isEmpty ? (
          <Empty
            onExample={() => {
              const typed = isFree ? { ...EXAMPLE_FACTS, ...sheet.typed } : sheet.typed;
              change({ ...exampleWeights(), isRevolution: true, typed });
            }}
          />
        ) : (
          <Judged answer={answer} wheel={own} product={name} version={versionOf(desk)} purpose={sheet.purpose} />
        )}
      </div>
    </div>
  );
}

const NO_MARKS: ReadonlyMap<number, string> = new Map();
/** Limits of the example, invented. */
const EXAMPLE_FACTS = {
  ...{ target_mg: 430, meanAction_pct: 3, individualAction_pct: 7.5, groupCount: 6, columnCount: 12 },
};

function versionOf({ state: { save } }: SheetDesk): number {
  return save.kind === 'conflict' ? save.current.version : save.version;
}

interface ToolsProps {
  readonly desk: SheetDesk;
  readonly isEmpty: boolean;
  readonly onFiles: (files: readonly File[]) => void;
}

function Tools({ desk, isEmpty, onFiles }: ToolsProps): ReactNode {
  const { undo, redo, state, problem } = desk;
  return (
    <div className="weights-tools no-print">
      <FileButton isSingle accept=".csv,.tsv,.txt,text/plain,text/csv" onFiles={onFiles}>
        {words.openFile}
      </FileButton>
      <button type="button" disabled={!undo} onClick={undo}>
        {words.undo}
      </button>
      <button type="button" disabled={!redo} onClick={redo}>
        {words.redo}
      </button>
      <button
        type="button"
        disabled={isEmpty}
        onClick={() => {
          window.print();
        }}
      >
        {words.print}
      </button>
      <span className={problem === undefined ? 'quiet' : 'attention'}>
        {problem ?? saveSentence(state.save, { thing: 'weights', isKeptHere: state.isKeptHere })}
      </span>
    </div>
  );
}

function Empty({ onExample }: { readonly onExample: () => void }): ReactNode {
  return (
    <section className="weights-empty">
      <h2>{words.empty.title}</h2>
      <ol>
        {words.empty.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <button type="button" onClick={onExample}>
        {words.empty.example}
      </button>
    </section>
  );
}

/** Undo and redo by their usual keys, wherever nothing is being typed. */
function undoKeys({ undo, redo }: SheetDesk): (event: KeyboardEvent) => void {
  return (event) => {
    const isTyping = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
    const key = event.key.toLowerCase();
    if (isTyping || !(event.ctrlKey || event.metaKey) || (key !== 'z' && key !== 'y')) return;
    event.preventDefault();
    if (key === 'y' || event.shiftKey) redo?.();
    else undo?.();
  };
}

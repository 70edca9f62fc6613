import { useCallback, useMemo, useState, type KeyboardEvent, type ReactNode } from 'react';
import { FILL_WORDS } from '@fillwright/words/en';
import {
  CapsuleDrawing,
  drawingOf,
  OpeningContext,
  SetUpDrawing,
  UprightDrawing,
  type DrawnSetUp,
  type Opening,
} from '../../drawing/index.ts';
import { AsTable } from './as-table.tsx';
import type { Workbench, WorkbenchState } from '../../state/index.ts';
import { Band } from './band.tsx';
import { BenchNotice } from './bench-notice.tsx';
import { OpenNumberPanel, useOpenNumber, usePanelAhead } from '../../numbers/index.ts';
import { PowderValues } from './powder-values.tsx';
import { setUpOf } from './set-up-of.ts';
import { useAnnouncedMoves } from './use-announced-moves.ts';
import { useIsNarrow } from './use-is-narrow.ts';
import { useLastInput } from './use-last-input.ts';
import './bench.css';

interface BenchProps {
  readonly state: WorkbenchState;
  readonly workbench: Workbench;
}

/** The bench: one drawing in which the parts are the levers, and under it what to expect and to decide. */
export function Bench({ state, workbench }: BenchProps): ReactNode {
  const input = useLastInput(state.brief);
  const { isNarrow, isUpright } = useIsNarrow();
  const [compared, setCompared] = useState<number>();
  const isOld = state.brief.kind === 'faulty';
  const move = isNarrow || isOld ? undefined : workbench.move;
  const setUp = useMemo(() => setUpOf(input, state, { move, compared }), [input, state, move, compared]);
  useAnnouncedMoves(setUp, state.before !== undefined);
  const take = useCallback(
    (rank: number) => {
      setCompared(undefined);
      workbench.take(rank);
    },
    [workbench],
  );
  const { opening, isOpen } = useOpening();
  usePanelAhead(setUp?.details !== undefined);
  return (
    <div className="bench" onKeyDown={undoKeys(workbench)}>
      <BenchNotice state={state} hasDrawing={setUp !== undefined} />
      {setUp ? (
        <OpeningContext value={opening}>
          <div className={isOld ? 'bench-all bench-old' : 'bench-all'} inert={isOld}>
            <Drawn setUp={setUp} setValue={workbench.setValue} {...{ isNarrow, isUpright }} />
            {state.refusal === undefined ? null : (
              <p className="bench-refusal attention" role="alert">
                {state.refusal}
              </p>
            )}
            {isOpen ? (
              <OpenNumberPanel />
            ) : (
              <Band {...{ state, workbench, setUp, isNarrow, compared, take }} compare={setCompared} />
            )}
            {isNarrow ? null : <AsTable setUp={setUp} />}
          </div>
        </OpeningContext>
      ) : null}
    </div>
  );
}

/** What the numbers of the drawing open, and whether one stands open now: it takes the place of the band. */
function useOpening(): { readonly opening: Opening; readonly isOpen: boolean } {
  const { open, letters, current } = useOpenNumber();
  const opening = useMemo(() => ({ open, letters }), [open, letters]);
  return { opening, isOpen: current !== undefined };
}

interface DrawnProps {
  readonly setUp: DrawnSetUp;
  readonly setValue: Workbench['setValue'];
  readonly isNarrow: boolean;
  readonly isUpright: boolean;
}

function Drawn({ setUp, setValue, isNarrow, isUpright }: DrawnProps): ReactNode {
  const { input, place, candidate } = setUp;
  const drawing = drawingOf(candidate.method);
  if (isNarrow) return <CapsuleDrawing setUp={setUp} />;
  if (!drawing) return <p className="attention">{FILL_WORDS.notDrawn(candidate.method)}</p>;
  const { spread } = candidate.prediction;
  // Rounded as shown: a last digit that moves with the lever would render every field.
  const unit_pct = Number(spread.unit_pct.toFixed(2));
  const unsure_pct = Number(spread.unsure_pct.toFixed(2));
  const beside = <PowderValues {...{ input, unit_pct, unsure_pct, setValue }} powder={place.context.material} />;
  const Drawing = isUpright ? UprightDrawing : SetUpDrawing;
  return <Drawing {...{ setUp, drawing, beside }} />;
}

/** Undo and redo by their usual keys, wherever nothing is being typed. */
function undoKeys({ undo, redo }: Workbench): (event: KeyboardEvent) => void {
  return (event) => {
    const isTyping = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
    const key = event.key.toLowerCase();
    if (isTyping || !(event.ctrlKey || event.metaKey) || (key !== 'z' && key !== 'y')) return;
    event.preventDefault();
    if (key === 'y' || event.shiftKey) redo();
    else undo();
  };
}

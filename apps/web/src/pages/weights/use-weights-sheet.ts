import type { WeightsSheet } from '@fillwright/contract/documents';
import { useCallback, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { problemText } from '../../briefs/index.ts';
import { FileDesk, type FileState } from '../../state/file-desk.ts';
import { sheetIn, sheetText } from '../../state/weights-sheet.ts';

const MOST_STEPS = 50;

export interface SheetDesk {
  readonly sheet: WeightsSheet;
  readonly state: FileState;
  readonly problem: string | undefined;
  readonly change: (part: Partial<WeightsSheet>) => void;
  readonly undo: (() => void) | undefined;
  readonly redo: (() => void) | undefined;
  readonly resolve: FileDesk['resolve'];
}

/** The sheet of weights that is open: kept as it is changed, every change a step of undo. */
export function useWeightsSheet(id: string): SheetDesk {
  const desk = useMemo(() => new FileDesk({ kind: 'weights', id }, { beginsEmpty: true }), [id]);
  const state = useSyncExternalStore(desk.subscribe, desk.state);
  const [steps, setSteps] = useState<Steps>(NO_STEPS);
  const [problem, setProblem] = useState<string>();
  useEffect(() => {
    setSteps(NO_STEPS);
    setProblem(undefined);
    desk.open().catch((error: unknown) => {
      setProblem(problemText(error));
    });
    return () => {
      void desk.close();
    };
  }, [desk]);
  const change = useCallback(
    (part: Partial<WeightsSheet>) => {
      const last = desk.state().text;
      const next = sheetText({ ...sheetIn(last), ...part });
      if (next === last) return;
      setSteps(({ past }) => ({ past: [...past.slice(1 - MOST_STEPS), last], future: [] }));
      desk.setText(next);
    },
    [desk],
  );
  const sheet = useMemo(() => sheetIn(state.text), [state.text]);
  const { undo, redo } = waysOf({ desk, steps, setSteps });
  return { sheet, state, problem, change, undo, redo, resolve: desk.resolve };
}

interface Steps {
  readonly past: readonly string[];
  readonly future: readonly string[];
}

const NO_STEPS: Steps = { past: [], future: [] };

function waysOf({
  desk,
  steps: { past, future },
  setSteps,
}: {
  readonly desk: FileDesk;
  readonly steps: Steps;
  readonly setSteps: (steps: Steps) => void;
}): Pick<SheetDesk, 'undo' | 'redo'> {
  const [back, forth] = [past.at(-1), future[0]];
  const now = desk.state().text;
  // A document has a text: an empty sheet is written out.
  const go = (text: string): void => {
    desk.setText(text === '' ? sheetText(sheetIn('')) : text);
  };
  return {
    undo:
      back === undefined
        ? undefined
        : () => {
            setSteps({ past: past.slice(0, -1), future: [now, ...future] });
            go(back);
          },
    redo:
      forth === undefined
        ? undefined
        : () => {
            setSteps({ past: [...past, now], future: future.slice(1) });
            go(forth);
          },
  };
}

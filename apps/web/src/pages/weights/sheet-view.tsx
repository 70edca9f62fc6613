import type { LimitCard } from '@fillwright/engine/design';
import type { WheelOfRevolution } from '@fillwright/engine/weights';
import { exampleWeights, WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import { useEffect, type ReactNode } from 'react';
import { ConflictPanel, useDropFiles } from '../../briefs/index.ts';
import { NumberDock, OpenNumberProvider } from '../../numbers/index.ts';
import type { WeightsFacts } from '../../state/weights-calls.ts';
import { Choices } from './choices.tsx';
import { EmptyState } from './empty-state.tsx';
import { Judged } from './judged.tsx';
import { RawPanel } from './raw-panel.tsx';
import { Tools } from './tools.tsx';
import { useMarks } from './use-marks.ts';
import { useUndoKeys } from './use-undo-keys.ts';
import { useWeightsAnswer } from './use-weights-answer.ts';
import type { SheetDesk } from './use-weights-sheet.ts';

const words = WEIGHTS_PAGE_WORDS;

interface SheetViewProps {
  readonly desk: SheetDesk;
  /** Left out until brief and design are there. */
  readonly facts: WeightsFacts | undefined;
  readonly wheel: WheelOfRevolution | undefined;
  readonly name: string;
  /** Limit card of the brief, before shells are pasted. */
  readonly card: LimitCard | undefined;
  /** No product says target, limits and tests. */
  readonly isFree: boolean;
  /** Hears how many weights there are. */
  readonly onCounted?: (count: number) => void;
}

/** The sheet of weights. Before what is kept is there nothing can be put on top of it. */
export function SheetView(props: SheetViewProps): ReactNode {
  if (props.desk.state.kind === 'asking') return <p className="weights quiet">{words.opening}</p>;
  return <OpenSheet {...props} />;
}

/** What was pasted on the left, what it says on the right. */
function OpenSheet({ desk, facts, wheel, name, card, isFree, onCounted }: SheetViewProps): ReactNode {
  const { sheet, state, change } = desk;
  const { answer, isPending } = useWeightsAnswer({ sheet, facts, wheel });
  const known = answer === 'broken' ? undefined : answer;
  const marks = useMarks(known?.judgement);
  useUndoKeys(desk);
  useCounted(known?.read?.capsules.length, isPending, onCounted);
  const take = (files: readonly File[]): void => {
    const [file] = files;
    if (file)
      void file.text().then((text) => {
        change({ weights: text });
      });
  };
  const { isOver, ...drop } = useDropFiles(take);
  const isEmpty = `${sheet.weights}${sheet.shells}`.trim() === '';
  const showExample = (): void => {
    const typed = isFree ? { ...EXAMPLE_FACTS, ...sheet.typed } : sheet.typed;
    change({ ...exampleWeights(), isRevolution: true, typed });
  };
  return (
    <OpenNumberProvider>
      <div className="weights" data-over={isOver ? '' : undefined} {...drop}>
        <Tools desk={desk} isEmpty={isEmpty} onFiles={take} />
        {isOver ? <p className="no-print">{words.drop}</p> : null}
        {state.save.kind === 'conflict' ? (
          <ConflictPanel thing="weights" save={state.save} onResolve={desk.resolve} />
        ) : null}
        <div className="weights-columns">
          <div className="weights-raw no-print">
            <Choices {...{ sheet, change, wheel, isFree }} />
            <RawPanel part="weights" text={sheet.weights} read={known?.read} marks={marks} change={change} />
            <RawPanel part="shells" text={sheet.shells} read={known?.shellsRead} marks={NO_MARKS} change={change} />
          </div>
          {isEmpty ? (
            <EmptyState card={card} onExample={showExample} />
          ) : (
            <Judged
              {...{ answer, isPending }}
              wheel={sheet.isRevolution ? wheel : undefined}
              product={name}
              version={versionOf(desk)}
            />
          )}
        </div>
      </div>
      <NumberDock />
    </OpenNumberProvider>
  );
}

function useCounted(count = 0, isPending: boolean, onCounted: SheetViewProps['onCounted']): void {
  useEffect(() => {
    if (!isPending) onCounted?.(count);
  }, [onCounted, count, isPending]);
}

const NO_MARKS: ReadonlyMap<number, string> = new Map();
/** Limits of the example, invented. */
const EXAMPLE_FACTS = {
  ...{ target_mg: 430, meanAction_pct: 3, individualAction_pct: 7.5, groupCount: 6, columnCount: 12 },
};

function versionOf({ state: { save } }: SheetDesk): number {
  return save.kind === 'conflict' ? save.current.version : save.version;
}

import type { WeightsSheet } from '@fillwright/contract/documents';
import type { WheelOfRevolution } from '@fillwright/engine/weights';
import { useEffect, useRef, useState } from 'react';
import {
  WeightsThread,
  type WeightsAnswer,
  type WeightsFacts,
  type WeightsQuestion,
} from '../../state/weights-calls.ts';

interface Asked {
  readonly sheet: WeightsSheet;
  /** Left out until they are known: nothing is asked before. */
  readonly facts: WeightsFacts | undefined;
  readonly wheel: WheelOfRevolution | undefined;
}

interface Heard {
  readonly answer: WeightsAnswer | 'broken' | undefined;
  /** What is shown is that of the texts before. */
  readonly isPending: boolean;
}

const NOTHING: Heard = { answer: undefined, isPending: false };

/** What the texts of a sheet say, read and judged off the main thread; the last answer stands until the next is there. */
export function useWeightsAnswer(asked: Asked): Heard {
  const { sheet, facts, wheel } = asked;
  const [heard, setHeard] = useState<Heard>(NOTHING);
  const thread = useRef<WeightsThread>(undefined);
  useEffect(() => {
    const begun = new WeightsThread((answer) => {
      setHeard({ answer, isPending: false });
    });
    thread.current = begun;
    return () => {
      begun.close();
    };
  }, []);
  const isEmpty = isBlank(sheet.weights) && isBlank(sheet.shells);
  useEffect(() => {
    if (isEmpty) {
      setHeard(NOTHING);
      return;
    }
    setHeard(({ answer }) => ({ answer, isPending: true }));
    if (facts) thread.current?.ask(questionOf({ sheet, wheel }, facts));
    // Of the sheet only what is asked counts: what is typed of tests and limits comes with the facts.
  }, [sheet.weights, sheet.shells, sheet.basis, sheet.unit, sheet.isRevolution, facts, wheel, isEmpty]);
  return isEmpty ? NOTHING : heard;
}

function questionOf({ sheet, wheel }: Omit<Asked, 'facts'>, facts: WeightsFacts): WeightsQuestion {
  const unit = sheet.unit === undefined ? {} : { unit: sheet.unit };
  const turned = sheet.isRevolution && wheel ? { wheel } : {};
  const { wheel: _ofFiller, ...known } = facts;
  return {
    ...(isBlank(sheet.weights) ? {} : { weights: { text: sheet.weights, basis: sheet.basis, ...unit, ...turned } }),
    ...(isBlank(sheet.shells) ? {} : { shells: { text: sheet.shells, basis: 'shell', ...unit } }),
    facts: { ...known, ...turned },
  };
}

function isBlank(text: string): boolean {
  return text.trim() === '';
}

import type { WeightsSheet } from '@fillwright/contract/documents';
import type { WheelOfRevolution } from '@fillwright/engine/weights';
import { useEffect, useRef, useState } from 'react';
import { WeightsThread, type WeightsAnswer, type WeightsFacts } from '../../state/weights-calls.ts';

interface Asked {
  readonly sheet: WeightsSheet;
  readonly facts: WeightsFacts;
  readonly wheel: WheelOfRevolution | undefined;
}

/** What the texts of a sheet say, read and judged off the main thread; the last answer stands until the next is there. */
export function useWeightsAnswer({ sheet, facts, wheel }: Asked): WeightsAnswer | 'broken' | undefined {
  const [answer, setAnswer] = useState<WeightsAnswer | 'broken'>();
  const thread = useRef<WeightsThread>(undefined);
  useEffect(() => {
    const begun = new WeightsThread(setAnswer);
    thread.current = begun;
    return () => {
      begun.close();
    };
  }, []);
  useEffect(() => {
    if (sheet.weights.trim() === '') {
      setAnswer(undefined);
      return;
    }
    const unit = sheet.unit === undefined ? {} : { unit: sheet.unit };
    const isWheel = sheet.isRevolution && wheel !== undefined;
    thread.current?.ask({
      weights: { text: sheet.weights, basis: sheet.basis, ...unit, ...(isWheel ? { wheel } : {}) },
      ...(sheet.shells.trim() === '' ? {} : { shells: { text: sheet.shells, basis: 'shell', ...unit } }),
      facts: isWheel ? { ...facts, wheel } : facts,
    });
  }, [sheet, facts, wheel]);
  return sheet.weights.trim() === '' ? undefined : answer;
}

import type { WeightsJudgement } from '@fillwright/engine/weights';
import { WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import { useMemo } from 'react';

/** Words beside the capsules that a verdict names, by index. */
export function useMarks(judgement: WeightsJudgement | undefined): ReadonlyMap<number, string> {
  return useMemo(() => {
    const { limits = [], outliers = [] } = judgement ?? {};
    const named = [...outliers, ...limits.flatMap(({ outside }) => outside)];
    const word = (deviation_pct: number): string =>
      deviation_pct < 0 ? WEIGHTS_PAGE_WORDS.low : WEIGHTS_PAGE_WORDS.high;
    return new Map(named.map(({ index, deviation_pct }) => [index, word(deviation_pct)]));
  }, [judgement]);
}

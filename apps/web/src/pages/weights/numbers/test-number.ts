import type { TestVerdict } from '@fillwright/engine/weights';
import { WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import type { NumberReference } from '../../../numbers/index.ts';
import type { Weighed } from './weighed.ts';

const words = WEIGHTS_VERDICT_WORDS.numbers;
const MOST_CAPSULES = 60;

/**
 * How the number that a test turns on was made.
 *
 * @param weighed - masses and judgement
 * @param verdict - of the test
 * @returns the reference; undefined for a test that had nothing to compute
 */
export function testNumber(weighed: Weighed, { test, numbers }: TestVerdict): NumberReference | undefined {
  const { net_mg = [], purpose } = weighed.judgement;
  if (test === 'uniformity-of-mass' && 'largestDeviation_pct' in numbers && net_mg.length <= MOST_CAPSULES)
    return {
      entry: 'statistics.uniformity-of-mass',
      inputs: { contents_mg: net_mg, route: [test], purpose },
      ...{ output: 'largestDeviation_pct', title: words.deviation, value: numbers['largestDeviation_pct'] },
      remark: words.remarks.largest,
    };
  if (!('acceptanceValue_pct' in numbers)) return undefined;
  const { mean_pct, sd_pct, capsuleCount, acceptanceValue_pct, factor_ratio = NaN } = numbers;
  return {
    entry: 'statistics.acceptance-value',
    inputs: { mean_pct, sd_pct, unitCount: capsuleCount, ...targetOf(weighed, test) },
    ...{ output: 'acceptanceValue_pct', title: words.acceptance, value: acceptanceValue_pct },
    letters: { k: factor_ratio },
  };
}

function targetOf({ judgement }: Weighed, test: TestVerdict['test']): { readonly target_pct?: number } {
  const target_pct = judgement.assurance.find((each) => each.test === test)?.contents?.target_pct;
  return target_pct === undefined ? {} : { target_pct };
}

import type { AssuranceOfPassing } from '@fillwright/engine/weights';
import { WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import type { NumberReference } from '../../../numbers/index.ts';
import type { Weighed } from './weighed.ts';

const words = WEIGHTS_VERDICT_WORDS.numbers;

/**
 * How a bound on passing was made.
 *
 * @param weighed - masses and judgement
 * @param assurance - of a test
 * @param which - the bound, or what holds if mean and spread are as found
 * @returns the reference; undefined where there is no bound
 */
export function assuranceNumber(
  { judgement: { net } }: Weighed,
  { test, lowerBound_frac, atEstimate_frac, confidence_frac, boundRsd_pct, contents }: AssuranceOfPassing,
  which: 'bound' | 'found',
): NumberReference | undefined {
  if (!net) return undefined;
  const value = which === 'bound' ? lowerBound_frac : atEstimate_frac;
  if (value === undefined) return undefined;
  const given = { title: words[which](WEIGHTS_VERDICT_WORDS.tests[test]), value };
  if (contents && which === 'bound') {
    const inputs = { ...contents, sampleCount: net.capsuleCount, confidence_frac };
    return { entry: 'statistics.assurance-of-sample', inputs, output: 'lowerBound_frac', ...given };
  }
  if (contents) return undefined;
  const relativeSd_pct = which === 'bound' ? boundRsd_pct : net.rsd.value_pct;
  if (relativeSd_pct === undefined || !(relativeSd_pct > 0)) return undefined;
  const inputs = { mean_mg: net.mean.value_mg, relativeSd_pct };
  return { entry: 'statistics.uniformity-of-mass-pass', inputs, output: 'pass_frac', ...given };
}

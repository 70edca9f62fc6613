import { adjusterName, OPEN_NUMBER_WORDS, PARAMETER_NAMES } from '@fillwright/words/en';
import type { NumberInterval } from './number-interval.ts';
import { numberText } from './number-text.ts';

const Z_90 = 1.6448536269514722;
/** Half the standard deviation leaves a quarter of the variance. */
const LEFT_WHEN_HALVED = 0.25;
/** Less is not worth a measurement. */
const LEAST_SHARE = 0.02;
const MOST = 3;

/**
 * What would narrow an interval: the parameters with the largest shares, each known twice as well.
 *
 * @param interval - of a number
 * @param unit - of that number
 * @returns sentences, the most useful first
 */
export function narrowing({ shares, sd }: NumberInterval, unit: string): readonly string[] {
  return shares
    .filter(({ share_frac }) => share_frac >= LEAST_SHARE)
    .slice(0, MOST)
    .map(({ key, share_frac, halvedBy }) => {
      const half = Z_90 * sd * Math.sqrt(1 - (1 - LEFT_WHEN_HALVED) * share_frac);
      const name = PARAMETER_NAMES[key] ?? adjusterName(key);
      return OPEN_NUMBER_WORDS.narrowed({
        how: halvedBy === undefined ? OPEN_NUMBER_WORDS.measureMore(name) : OPEN_NUMBER_WORDS.halvedBy(halvedBy),
        to: numberText(half, { unit, digits: 2 }),
      });
    });
}

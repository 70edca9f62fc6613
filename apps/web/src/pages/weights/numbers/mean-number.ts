import { WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import type { NumberReference } from '../../../numbers/index.ts';

const words = WEIGHTS_VERDICT_WORDS.numbers;

/**
 * How the mean of a row or column of the grid was made.
 *
 * @param values_data - net masses in it, at least 2, mg
 * @param of - what it is called, and the mean that the page shows, mg
 * @returns the reference
 */
export function meanNumber(
  values_data: readonly number[],
  of: { readonly name: string; readonly mean_mg: number },
): NumberReference {
  return {
    ...{ entry: 'statistics.sample-summary', inputs: { values_data }, output: 'mean_data', unit: 'mg' },
    ...{ origins: { values_data: { words: words.origins.found } }, title: words.placeMean(of.name), value: of.mean_mg },
  };
}

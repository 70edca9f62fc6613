import type { Tolerance } from '@fillwright/engine/catalogue';
import { REPORT_WORDS } from '@fillwright/words/en';
import { plainNumber } from '@fillwright/words/numbers';

/**
 * A tolerance in a few letters.
 *
 * @param tolerance - of a check case
 * @returns for example `abs 0.001`, `rel 0.0001`, `exact`; tolerances of single fields follow their names
 */
export function toleranceText({ abs, rel, fields = {} }: Tolerance): string {
  const parts = [
    ...(abs ? [`abs ${shown(abs)}`] : []),
    ...(rel ? [`rel ${shown(rel)}`] : []),
    ...Object.entries(fields).map(([name, bounds]) => `${name} ${toleranceText(bounds)}`),
  ];
  return parts.length === 0 ? REPORT_WORDS.exactly : parts.join(', ');
}

function shown(value: number): string {
  return plainNumber(value, { upToSignificantDigits: 3 });
}

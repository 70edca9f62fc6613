import { nearestName, type InputFault } from '@fillwright/engine/catalogue';
import { convertedValue } from '@fillwright/engine/quantity';
import { meanAt, valueAt } from '#written';
import { fieldOf } from './field-of.ts';
import type { SourceDocument } from './source-document.ts';
import { written } from './written.ts';

interface UnknownKey {
  readonly path: readonly PropertyKey[];
  readonly known: readonly string[];
}

/**
 * A key that is not known: misspelt, without its unit, with another unit, or of something else.
 *
 * @param document - the document
 * @param key - path of the key, and the keys that are known there
 * @returns the fault, with the key that was meant and, where a factor is exact, the value in its unit
 */
export function unknownKeyFault(document: SourceDocument, { path, known }: UnknownKey): InputFault {
  const key = String(path.at(-1));
  const beside = valueAt(document.value, path.slice(0, -1)) as object;
  const absent = known.filter((candidate) => !Object.hasOwn(beside, candidate));
  const nearest = nearestName(key, absent) ?? nearestName(key, known);
  const fault = { field: fieldOf(path), ...written(document, path) };
  if (nearest === undefined) return { code: 'unknown-field', ...fault };
  const [stem, unit] = split(key);
  const [nearestStem, nearestUnit] = split(nearest);
  if (stem.toLowerCase() !== nearestStem.toLowerCase() || nearestUnit === undefined)
    return { code: 'unknown-field', ...fault, nearest };
  if (unit === undefined) return { code: 'unit-missing', ...fault, nearest };
  const mean = meanAt(document.value, path);
  const converted = mean === undefined ? undefined : convertedValue({ value: mean, from: unit, to: nearestUnit });
  return { code: 'unit-wrong', ...fault, nearest, ...(converted === undefined ? {} : { facts: { converted } }) };
}

/** `tappedDensity_g_per_mL` -> `tappedDensity`, `g_per_mL`. */
function split(key: string): readonly [string, string | undefined] {
  const at = key.indexOf('_');
  return at < 0 ? [key, undefined] : [key.slice(0, at), key.slice(at + 1)];
}

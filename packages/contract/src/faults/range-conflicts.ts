import type { InputFault } from '@fillwright/engine/catalogue';
import { meanAt } from '#written';
import { conflictAt } from './conflict-at.ts';

/**
 * Ranges `{min_mm, max_mm}` whose lower end lies above the upper one.
 *
 * @param raw - the document
 * @param paths - where ranges may stand
 * @returns one conflict for each range that is upside down
 */
export function rangeConflicts(raw: unknown, paths: readonly (readonly PropertyKey[])[]): InputFault[] {
  return paths.flatMap((path) => {
    const min_mm = meanAt(raw, [...path, 'min_mm']);
    const max_mm = meanAt(raw, [...path, 'max_mm']);
    if (min_mm === undefined || max_mm === undefined || min_mm <= max_mm) return [];
    return [conflictAt('range-upside-down', path, { min_mm, max_mm })];
  });
}

import type { WeightsFault } from '@fillwright/engine/weights';
import type { MassUnit } from './weights-read.ts';

/** Units that a column bears, with the line of each where it first stands. */
export interface UnitsSeen {
  readonly seen: ReadonlyMap<MassUnit, number>;
  /** What the person says of weights without unit. */
  readonly given: MassUnit | undefined;
}

/**
 * The one unit of a column: written in its heading or beside its values, else said by the person. Never guessed.
 *
 * @param units - what is written, and what was said
 * @returns the unit, or the fault
 */
export function unitOfColumn({
  seen,
  given,
}: UnitsSeen): { readonly unit: MassUnit; readonly isWritten: boolean } | WeightsFault {
  const [first, second] = [...seen];
  if (first && second) {
    const [later, earlier] = first[1] > second[1] ? [first, second] : [second, first];
    return { code: 'units-mixed', line: later[1], facts: { first: earlier[0], second: later[0] } };
  }
  const unit = first?.[0] ?? given;
  return unit === undefined ? { code: 'unit-missing' } : { unit, isWritten: first !== undefined };
}

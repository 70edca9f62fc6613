import { DomainError, type InputFault } from '@fillwright/engine/catalogue';
import { shellGeometry } from '@fillwright/engine/shells';
import { conflictAt } from '#faults';
import { shellSchema } from './shell-schema.ts';

/**
 * Dimensions of a shell that contradict each other: a wall thicker than the radius, a body longer than the locked shell.
 *
 * @param raw - a shell file of any form
 * @returns the conflicts
 */
export function shellConflicts(raw: unknown): readonly InputFault[] {
  const record = shellSchema.safeParse(raw);
  if (!record.success) return [];
  try {
    shellGeometry(record.data);
    return [];
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const facts = Object.entries(error.facts).filter((fact): fact is [string, number] => typeof fact[1] === 'number');
    return [conflictAt('shell-halves-disagree', ['closedLength_mm'], Object.fromEntries(facts))];
  }
}

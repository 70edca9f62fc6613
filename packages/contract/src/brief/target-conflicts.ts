import { targetFill, type Substance } from '@fillwright/engine/brief';
import { DomainError, nearestName, type InputFault } from '@fillwright/engine/catalogue';
import { conflictAt, fieldOf } from '#faults';
import { itemsAt, meanAt, repeatsIn, textAt, valueAt } from '#written';
import { targetSchema } from './target-schema.ts';

const TARGET = ['parts', 0, 'target'] as const;
const SUBSTANCES = [...TARGET, 'substances'] as const;

/**
 * Values of a target that contradict each other.
 *
 * @param raw - a brief of any form
 * @returns the conflicts
 */
export function targetConflicts(raw: unknown): readonly InputFault[] {
  const names = itemsAt(raw, SUBSTANCES).map((substance) => textAt(substance, ['name']));
  const twice = repeatsIn(names).map(({ name, index }) =>
    conflictAt('substance-twice', [...SUBSTANCES, index, 'name'], { name }),
  );
  const isFollowing = textAt(raw, [...TARGET, 'rule']) === 'follows-assay';
  return [...twice, ...(isFollowing ? followConflicts(raw, names) : []), ...claimConflicts(raw), ...arithmetic(raw)];
}

/** Which substance sets the fill, and what is known of its load. */
function followConflicts(raw: unknown, names: readonly (string | undefined)[]): readonly InputFault[] {
  const path = [...TARGET, 'follows'];
  const given = textAt(raw, path);
  const known = names.filter((name) => name !== undefined);
  if (given === undefined && names.length > 1 && valueAt(raw, path) === undefined)
    return [{ code: 'missing', field: fieldOf(path), allowed: known.join(', ') }];
  const index = given === undefined ? 0 : names.indexOf(given);
  if (index < 0) {
    const nearest = nearestName(given ?? '', known);
    const fault = conflictAt('follows-unknown', path, { names: known.join(', ') });
    return [{ ...fault, value: given ?? '', ...(nearest === undefined ? {} : { nearest }) }];
  }
  const load = [...SUBSTANCES, index, 'blendLoad_pct'];
  if (names.length === 0 || valueAt(raw, load) !== undefined) return [];
  return [{ code: 'missing', field: fieldOf(load), allowed: 'a number, above 0, at most 100 %' }];
}

/** A fixed fill that is lighter than the substance it has to carry. */
function claimConflicts(raw: unknown): readonly InputFault[] {
  const fill_mg = meanAt(raw, [...TARGET, 'fill_mg']);
  if (fill_mg === undefined) return [];
  const needed_mg = itemsAt(raw, SUBSTANCES).reduce<MassInFile>(
    (sum, substance) => sum + (meanAt(substance, ['claim_mg']) ?? 0) * (meanAt(substance, ['saltFactor_ratio']) ?? 1),
    0,
  );
  return needed_mg > fill_mg ? [conflictAt('claim-above-fill', [...TARGET, 'fill_mg'], { fill_mg, needed_mg })] : [];
}

/** A mass in the unit of its key, mg. */
type MassInFile = number;

/** What the engine's own arithmetic refuses, on a target whose form is right. */
function arithmetic(raw: unknown): readonly InputFault[] {
  const target = targetSchema.safeParse(valueAt(raw, TARGET));
  if (!target.success || (target.data.rule === 'follows-assay' && !hasLeader(target.data))) return [];
  try {
    targetFill(target.data);
    return [];
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const facts = Object.fromEntries(
      Object.entries(error.facts).filter((fact): fact is [string, number | string] => typeof fact[1] !== 'object'),
    );
    if (error.code === 'excipients-above-total')
      return [conflictAt('substances-above-total', [...TARGET, 'total_mg'], facts)];
    return [{ code: 'conflict', field: fieldOf(TARGET), rule: error.code, facts }];
  }
}

function hasLeader(target: { follows?: string; substances: readonly Substance[] }): boolean {
  const { follows, substances } = target;
  const leader =
    follows === undefined && substances.length === 1 ? substances[0] : substances.find((s) => s.name === follows);
  return leader?.blendLoad_pct !== undefined;
}

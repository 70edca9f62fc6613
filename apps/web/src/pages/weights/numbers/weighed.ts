import type { WeighedPlace, WeightsJudgement } from '@fillwright/engine/weights';
import type { WeightsAnswer } from '../../../state/weights-calls.ts';

/** What was judged, with the masses it was made from. */
export interface Weighed {
  readonly judgement: WeightsJudgement;
  /** As on the balance, in the order weighed. */
  readonly masses_mg: readonly number[];
  /** Each capsule's own, where they are known. */
  readonly ownShells_mg: readonly number[] | undefined;
  /** Some shells of the lot. */
  readonly shells_mg: readonly number[];
  /** Of each capsule, as far as it is known. */
  readonly places: readonly Pick<WeighedPlace, 'group' | 'column'>[];
}

/**
 * Masses and judgement of an answer, side by side.
 *
 * @param answer - of the worker
 * @returns both; undefined while there is no judgement
 */
export function weighed({ read, shellsRead, judgement }: WeightsAnswer): Weighed | undefined {
  if (!read || !judgement) return undefined;
  const own = read.capsules.flatMap(({ shell_mg }) => (shell_mg === undefined ? [] : [shell_mg]));
  return {
    judgement,
    masses_mg: read.capsules.map(({ mass_mg }) => mass_mg),
    ownShells_mg: own.length === read.capsules.length ? own : undefined,
    shells_mg: (shellsRead ?? read).shells_mg,
    places: read.capsules.map(({ place = {} }) => place),
  };
}

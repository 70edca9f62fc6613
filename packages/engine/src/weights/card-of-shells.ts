import { limitCard, type LimitCard } from '#design';
import { tareOfShells } from './tare-of-shells.ts';
import type { WeightsInput } from './weights-input.ts';

/**
 * The limit card of a shell lot, before a capsule is filled.
 *
 * @param known - target and limits of the dossier
 * @param shells_mg - empty shells, weighed one by one
 * @returns the card; undefined without target or limits, and for fewer than 2 shells
 * @throws nothing
 * @source gross = net + mean tare (design.limits)
 * @validity these shells only
 */
export function cardOfShells(
  { target_mg, limits }: Pick<WeightsInput, 'target_mg' | 'limits'>,
  shells_mg: readonly number[],
): LimitCard | undefined {
  if (target_mg === undefined || !limits || shells_mg.length < 2) return undefined;
  return limitCard({ target_mg, limits, tare: { ...tareOfShells(shells_mg), basis: 'measured' } });
}

import { studentQuantile, studentSurvival } from '@fillwright/stats/distributions';
import type { GridFit } from './grid-fit.ts';
import type { PlaceMean } from './weights-judgement.ts';

/** Familywise level of one kind of place: 0.05 for columns, groups and single bores together. */
export const LEVEL_frac = 0.05 / 3;
const CONFIDENCE_frac = 0.95;

/** Rows or columns of a revolution that are compared. */
export interface Compared {
  readonly fit: GridFit;
  readonly kind: 'group' | 'column';
  /** An effect smaller than this is no fault, however sure it is. */
  readonly least_mg: number;
}

/**
 * Each group, or each column, against all others of its kind that are not odd themselves; the most odd is set apart first.
 *
 * @param compared - the fitted grid, what is compared, and the least effect that counts
 * @returns mean, effect with its 95 % interval (simultaneous), familywise P, and whether it is odd
 * @throws nothing
 * @source contrast of one mean against the rest in a two-way layout, Student's t, Bonferroni over the places of one kind
 * @validity additive groups and columns, equal spread; with missing cells standard errors are approximate
 */
export function placeEffects({ fit, kind, least_mg }: Compared): readonly PlaceMean[] {
  const places = fit.places(kind);
  const odd = new Map<number, PlaceMean>();
  for (;;) {
    const active = places.filter(({ index }) => !odd.has(index));
    const found = active.map((place) => against(fit, { place, rest: active, familyCount: places.length, least_mg }));
    const worst = found.filter(({ isOdd }) => isOdd).sort((a, b) => Math.abs(b.effect_mg) - Math.abs(a.effect_mg))[0];
    // Half of the places cannot all be odd: the last ones are then the rest itself.
    if (!worst || 2 * (odd.size + 1) > places.length)
      return [...found, ...odd.values()].sort((a, b) => a.index - b.index);
    odd.set(worst.index, worst);
  }
}

interface Against {
  readonly place: ReturnType<GridFit['places']>[number];
  readonly rest: ReturnType<GridFit['places']>;
  readonly familyCount: number;
  readonly least_mg: number;
}

function against(
  { sd_mg, degreesOfFreedomCount }: GridFit,
  { place, rest, familyCount, least_mg }: Against,
): PlaceMean {
  const others = rest.filter(({ index }) => index !== place.index);
  const count = others.reduce((sum, { capsuleCount }) => sum + capsuleCount, 0);
  const others_mg = others.reduce((sum, { mean_mg, capsuleCount }) => sum + mean_mg * capsuleCount, 0) / count;
  const effect_mg = place.mean_mg - others_mg;
  const error_mg = sd_mg * Math.sqrt(1 / place.capsuleCount + 1 / count);
  const law = { degreesOfFreedom: degreesOfFreedomCount };
  const p = (1 - CONFIDENCE_frac) / (2 * familyCount);
  const half_mg = studentQuantile({ p, ...law, tail: 'upper' }) * error_mg;
  const beyond =
    error_mg > 0 ? studentSurvival({ x: Math.abs(effect_mg) / error_mg, ...law }) : effect_mg === 0 ? 1 : 0;
  const familywiseP_frac = Math.min(1, 2 * familyCount * beyond);
  return {
    ...{ index: place.index, capsuleCount: place.capsuleCount, net_mg: place.rawMean_mg, effect_mg },
    ...{ low_mg: effect_mg - half_mg, high_mg: effect_mg + half_mg, familywiseP_frac },
    isOdd: familywiseP_frac < LEVEL_frac && Math.abs(effect_mg) >= least_mg,
  };
}

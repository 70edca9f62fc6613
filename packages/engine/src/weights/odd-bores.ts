import { studentQuantile, studentSurvival } from '@fillwright/stats/distributions';
import type { GridFit } from './grid-fit.ts';
import { LEVEL_frac } from './place-effects.ts';
import type { Revolution } from './weights-judgement.ts';

const CONFIDENCE_frac = 0.95;

/**
 * Single capsules that neither their group nor their column explains: residuals of the two-way layout, each judged with the
 * spread of the others.
 *
 * @param fit - the grid, with odd groups and columns taken out by the fit itself
 * @param least_mg - an effect smaller than this is no fault
 * @returns the odd ones
 * @throws nothing
 * @source externally studentised residual, R. D. Cook, S. Weisberg (1982), Residuals and influence in regression, 2.2;
 *   Bonferroni over all cells
 * @validity complete grid; with missing cells the leverage is approximate. One revolution cannot tell a bore from chance: jog
 *   another
 */
export function oddBores(fit: GridFit, least_mg: number): Revolution['bores'] {
  const { residuals_mg, capsuleCount, sd_mg, degreesOfFreedomCount, cells_mg } = fit;
  const free_frac = degreesOfFreedomCount / capsuleCount;
  const law = { degreesOfFreedom: degreesOfFreedomCount - 1 };
  const p = (1 - CONFIDENCE_frac) / (2 * capsuleCount);
  const factor = studentQuantile({ p, ...law, tail: 'upper' });
  return residuals_mg.flatMap((row, g) =>
    row.flatMap((rest_mg, c): Revolution['bores'] => {
      if (rest_mg === null) return [];
      // What the capsule adds to the sum of squares is taken out before it is judged.
      const others_mg2 = sd_mg * sd_mg * degreesOfFreedomCount - (rest_mg * rest_mg) / free_frac;
      const othersSd_mg = Math.sqrt(Math.max(others_mg2, 0) / law.degreesOfFreedom);
      const effect_mg = rest_mg / free_frac;
      const error_mg = othersSd_mg / Math.sqrt(free_frac);
      if (!(error_mg > 0)) return [];
      const beyond = studentSurvival({ x: Math.abs(effect_mg) / error_mg, ...law });
      const familywiseP_frac = Math.min(1, 2 * capsuleCount * beyond);
      if (!(familywiseP_frac < LEVEL_frac && Math.abs(effect_mg) >= least_mg)) return [];
      const half_mg = factor * error_mg;
      return [
        {
          ...{ index: g * row.length + c + 1, group: g + 1, column: c + 1, capsuleCount: 1, effect_mg },
          ...{ net_mg: cells_mg[g]![c]!, low_mg: effect_mg - half_mg, high_mg: effect_mg + half_mg },
          ...{ familywiseP_frac, isOdd: true },
        },
      ];
    }),
  );
}

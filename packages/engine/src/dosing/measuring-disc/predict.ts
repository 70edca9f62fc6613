import { compressibilityIndex_pct } from '#materials';
import type { Quantity } from '#quantity';
import { slugFit, slugGrade } from '#shells';
import type { DosingContext, ParameterValues, Prediction, Settings } from '../dosing.ts';
import { valuesAtMeans } from '../parameter-values.ts';
import { densityProfile } from './density-profile.ts';
import { parameters } from './parameters.ts';
import { runOfValues } from './run-of-values.ts';
import { setUpOf } from './set-up.ts';
import { spread } from './spread.ts';
import { tampStations } from './tamp-stations.ts';
import type { DiscRun } from './disc-run.ts';
import { discWarnings } from './warnings.ts';

/** Powder lost between disc and base; consumption only. @source common practice, no source */
const GAP_LOSS_pct: Quantity = { basis: 'guess', mean: 0.5, sd: 0.5, halvedBy: 'powder-balance' };

/**
 * Predicts one dose from the measuring disc: station by station, the slug, its fit in the shell, spread and warnings.
 *
 * @param context - material, filler and shell
 * @param settings - disc, springs and depths
 * @param values - parameter values that replace the prior means
 * @returns the prediction at these values
 * @throws DomainError "invalid-input" (a part that is not in stock, a missing depth), "out-of-range" (a depth)
 * @source this project's station model; slug between the domes: geometry
 * @validity see the catalogue entry dosing.disc-stations
 */
export function predict(context: DosingContext, settings: Settings, values: ParameterValues = {}): Prediction {
  const { material, shell } = context;
  const setUp = setUpOf(context, settings);
  const run = runOfValues(context, setUp)(valuesAtMeans(parameters(context, settings), values));
  const stations = tampStations(run);
  const mass_mg = stations.at(-1)?.mass_mg ?? NaN;
  const inDisc_mm = lengthInDisc_mm(run, stations.at(-1)?.reached_mm ?? 0);
  const released_mm = inDisc_mm * (1 + material.axialSpringback_pct.mean / 100);
  const slug = { geometry: shell, boreDiameter_mm: setUp.boreDiameter_mm };
  const index_pct = compressibilityIndex_pct({
    bulkDensity_g_per_mL: material.bulkDensity_g_per_mL.mean,
    tappedDensity_g_per_mL: material.tappedDensity_g_per_mL.mean,
  });
  const gainOnStop_mg_per_mm = run.refill_ratio * run.feedDensity_g_per_mL * run.boreArea_mm2;
  const workingPinCount = setUp.depths_mm.filter((depth) => depth > 0).length;
  const prediction = {
    mass_mg,
    density_g_per_mL: mass_mg / (run.boreArea_mm2 * inDisc_mm),
    released_mm,
    bore_mm: setUp.boreDiameter_mm,
    width_mm: setUp.boreDiameter_mm * (1 + material.radialSpringback_pct.mean / 100),
    longest_mm: slugFit(slug).longestSlug_mm,
    fit: slugGrade({ ...slug, slugLength_mm: released_mm }),
    gapLoss_pct: GAP_LOSS_pct,
    stations,
    profile: densityProfile(context, run, stations),
    spread: spread(context, { mass_mg, gainOnStop_mg_per_mm, workingPinCount, compressibilityIndex_pct: index_pct }),
  };
  return { ...prediction, warnings: discWarnings(context, { ...prediction, run, index_pct }) };
}

/** A deep last pin that is not refilled leaves a shorter slug. */
function lengthInDisc_mm(run: DiscRun, lastReached_mm: number): number {
  return run.isRefilledAfterLastPin ? run.discHeight_mm : run.discHeight_mm - lastReached_mm;
}

import { compressibilityIndex_pct } from '#materials';
import { slugFit, slugGrade } from '#shells';
import type { DosingContext, ParameterValues, Prediction, Settings } from '../dosing.ts';
import { valuesAtMeans } from '../parameter-values.ts';
import { densityProfile } from './density-profile.ts';
import { parameters } from './parameters.ts';
import { runOfValues } from './run-of-values.ts';
import { setUpOf } from './set-up.ts';
import { spread } from './spread.ts';
import { tampStations, type DiscRun } from './tamp-stations.ts';
import { discWarnings } from './warnings.ts';

/** Powder lost between disc and base; consumption only. @source common practice, no source: 0.5 +- 0.5 % */
const GAP_LOSS_pct = 0.5;
/** Half the step of the central difference for the gain of a pin. */
const PROBE_mm = 0.05;

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
  const run = runOfValues(context, setUp, valuesAtMeans(parameters(context, settings), values));
  const stations = tampStations(run);
  const mass_mg = stations.at(-1)?.mass_mg ?? NaN;
  const inDisc_mm = lengthInDisc_mm(run, stations.at(-1)?.reached_mm ?? 0);
  const released_mm = inDisc_mm * (1 + material.axialSpringback_pct.mean / 100);
  const slug = { geometry: shell, boreDiameter_mm: setUp.boreDiameter_mm };
  const index_pct = compressibilityIndex_pct({
    bulkDensity_g_per_mL: material.bulkDensity_g_per_mL.mean,
    tappedDensity_g_per_mL: material.tappedDensity_g_per_mL.mean,
  });
  const prediction = {
    mass_mg,
    density_g_per_mL: mass_mg / (run.boreArea_mm2 * inDisc_mm),
    released_mm,
    longest_mm: slugFit(slug).longestSlug_mm,
    fit: slugGrade({ ...slug, slugLength_mm: released_mm }),
    gapLoss_pct: GAP_LOSS_pct,
    stations,
    profile: densityProfile(context, run, stations),
    spread: spread(context, {
      mass_mg,
      pinGains_mg_per_mm: pinGains_mg_per_mm(run),
      compressibilityIndex_pct: index_pct,
    }),
  };
  return { ...prediction, warnings: discWarnings(context, { ...prediction, run, index_pct }) };
}

/** A deep last pin that is not refilled leaves a shorter slug. */
function lengthInDisc_mm(run: DiscRun, lastReached_mm: number): number {
  return run.isRefilledAfterLastPin ? run.discHeight_mm : run.discHeight_mm - lastReached_mm;
}

function pinGains_mg_per_mm(run: DiscRun): readonly number[] {
  const massWith_mg = (k: number, change_mm: number): number => {
    const depths_mm = run.depths_mm.map((depth, i) => (i === k ? depth + change_mm : depth));
    return tampStations({ ...run, depths_mm }).at(-1)?.mass_mg ?? NaN;
  };
  return run.depths_mm.map((depth, k) => {
    const probe_mm = Math.min(PROBE_mm, depth);
    return probe_mm === 0 ? 0 : (massWith_mg(k, probe_mm) - massWith_mg(k, -probe_mm)) / (2 * probe_mm);
  });
}

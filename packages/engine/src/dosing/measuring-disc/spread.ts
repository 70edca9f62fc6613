import type { DosingContext, Spread, SpreadComponent } from '../dosing.ts';

/** Spread of a disc filler without a record of its own, % of the mass by cause. @source common practice, no source */
const GUESSED = {
  stroke_pct: 0.8,
  betweenBore_pct: 0.8,
  transfer_pct: 0.5,
  rest_pct: 1.75,
  unsure_frac: 0.6 / 2.2,
} as const;
/** Length of one pin against the others of its station, one standard deviation. @source common practice, no source */
const PIN_LENGTH_SD_mm = 0.05;
/** Bed level matters only for poor flow. @source common practice; that it matters only then: open machine study of a tamping filler (abstract seen) */
const BED_LEVEL_pct = 1.0;
const POOR_FLOW_ABOVE_pct = 25;

/**
 * Spread between capsules by cause. The guess does not depend on flow (but for the bed level) or on the disc until a
 * machine's own record gives such a dependence; so it ranks methods, not discs. A pin on spring passes on less of its
 * length error: nothing is credited for that either.
 *
 * @param context - a record of the machine replaces the total and keeps the shares of the causes
 * @param dose - mass_mg, mass per mm of a pin on its stop, number of working pins, compressibilityIndex_pct of the powder
 * @returns components, their total, and how unsure the total is
 * @throws nothing
 * @source common practice, no source: unit sd 2.2 +- 0.6 %, of it stroke 0.8, between bores 0.8, pin length 0.05 mm per
 *   column and station, transfer 0.5, rest 1.75, bed level 1.0 where CI > 25
 * @validity weights net of the shell; slow drifts are not in it
 */
export function spread(context: DosingContext, dose: DoseForSpread): Spread {
  const { mass_mg, gainOnStop_mg_per_mm, workingPinCount, compressibilityIndex_pct } = dose;
  const pins_mg = gainOnStop_mg_per_mm * PIN_LENGTH_SD_mm * Math.sqrt(workingPinCount);
  const components: readonly SpreadComponent[] = [
    { cause: 'stroke', sd_pct: GUESSED.stroke_pct, sharedBy: 'stroke' },
    { cause: 'between-bore', sd_pct: GUESSED.betweenBore_pct, sharedBy: 'bore' },
    { cause: 'pin-length', sd_pct: (100 * pins_mg) / mass_mg, sharedBy: 'column' },
    { cause: 'transfer', sd_pct: GUESSED.transfer_pct, sharedBy: 'unit' },
    { cause: 'rest', sd_pct: GUESSED.rest_pct, sharedBy: 'unit' },
    {
      cause: 'bed-level',
      sd_pct: compressibilityIndex_pct > POOR_FLOW_ABOVE_pct ? BED_LEVEL_pct : 0,
      sharedBy: 'unit',
    },
  ];
  const unit_pct = Math.sqrt(components.reduce((sum, { sd_pct }) => sum + sd_pct * sd_pct, 0));
  const recorded = context.recordedUnit_pct;
  if (!recorded) return { components, unit_pct, unsure_pct: GUESSED.unsure_frac * unit_pct, basis: 'guess' };
  const scale = recorded.mean / unit_pct;
  return {
    components: components.map((c) => ({ ...c, sd_pct: c.sd_pct * scale })),
    unit_pct: recorded.mean,
    unsure_pct: recorded.sd,
    basis: recorded.basis,
  };
}

interface DoseForSpread {
  readonly mass_mg: number;
  /** Mass per mm of a pin on its stop. */
  readonly gainOnStop_mg_per_mm: number;
  readonly workingPinCount: number;
  readonly compressibilityIndex_pct: number;
}

import type { DosingContext, DosingMethod, Prediction, Settings } from '#dosing';
import type { AfterSetUp } from './after-set-up.ts';
import type { Merits } from './candidate.ts';

export interface MeritsInput {
  readonly method: DosingMethod;
  readonly context: DosingContext;
  readonly settings: Settings;
  readonly prediction: Prediction;
  readonly afterSetUp: AfterSetUp;
  /** The filler stands for another shell size: that counts as one more change. */
  readonly isSizeChange: boolean;
}

/**
 * What a candidate is compared by.
 *
 * @param input - the candidate with its context
 * @returns shares outside, spread, margins, speed, parts to change, stations on spring
 * @throws nothing
 * @source this project's ranking criteria
 */
export function meritsOf(input: MeritsInput): Merits {
  const { method, context, settings, prediction, afterSetUp, isSizeChange } = input;
  const adjusters = method.adjusters(context, settings);
  const margins = adjusters.flatMap((adjuster) => {
    if (adjuster.kind !== 'setting' || adjuster.isIdle) return [];
    const { min_mm, max_mm } = adjuster.validatedRange;
    const at_mm = settings.values[adjuster.key] ?? NaN;
    return [Math.min(at_mm - min_mm, max_mm - at_mm) / ((max_mm - min_mm) / 2)];
  });
  const partChanges = adjusters.filter(
    (adjuster) =>
      adjuster.kind === 'part' &&
      !adjuster.inStock.some(({ number, isMounted }) => isMounted && number === settings.parts[adjuster.slot]),
  );
  const { filler } = context;
  return {
    capsulesOutside_frac: afterSetUp.capsulesOutside_frac,
    sampleMeansOutside_frac: afterSetUp.sampleMeansOutside_frac,
    unit_pct: prediction.spread.unit_pct,
    volumeMargin_frac: (prediction.longest_mm - prediction.released_mm) / prediction.longest_mm,
    adjusterMargin_frac: margins.length === 0 ? 0 : Math.min(...margins),
    speed_per_h: 60 * filler.speed.usual_strokes_per_min * filler.carriers.boreCount,
    partsToChangeCount: partChanges.length + (isSizeChange ? 1 : 0),
    onSpringCount: prediction.stations.filter(({ regime }) => regime === 'on-spring' || regime === 'limited').length,
  };
}

import { requireWithin, StatsError } from '#elementary';

export interface AdjustmentRun {
  /** What would be observed if nothing were ever changed; one or more, in time order. */
  readonly disturbance: readonly number[];
  readonly target: number;
  readonly lambda: number;
  /** Half width of the dead band on the forecast, in the unit of the data. */
  readonly deadBand: number;
  /** Change of the observation per unit of the setting; not 0. */
  readonly gain: number;
  /** Largest change at once, in units of the setting; left out: unlimited. */
  readonly maxChange?: number;
}

export interface AdjustmentStep {
  readonly observed: number;
  /** Forecast of the next deviation from target, before a change. */
  readonly forecast: number;
  /** Change of the setting after this observation, 0 inside the dead band. */
  readonly change: number;
}

/**
 * Feedback adjustment with a dead band, observation by observation.
 *
 * forecast = previous forecast + lambda (deviation - previous forecast); when |forecast| >= L the setting changes by -forecast
 * / gain, at most the largest change, and the forecast keeps what the change leaves.
 *
 * @param input - lambda above 0, up to 1; deadBand 0 or more; maxChange above 0
 * @returns observation, forecast and change at every step
 * @throws StatsError "sample-size" (no value), "not-finite", "out-of-range"
 * @source G. E. P. Box, A. Luceno (1997), bounded adjustment (from memory)
 * @validity a change takes full effect on the next observation; with a delay the forecast would act twice on the same deviation
 */
export function adjustmentSequence(input: AdjustmentRun): readonly AdjustmentStep[] {
  const { disturbance, target, lambda, deadBand, gain, maxChange = Number.MAX_VALUE } = input;
  requireWithin({ target });
  requireWithin({ lambda }, { above: 0, max: 1 });
  requireWithin({ deadBand }, { min: 0 });
  requireWithin({ gain });
  if (gain === 0) throw new StatsError('out-of-range', { gain, above: 0 });
  requireWithin({ maxChange }, { above: 0 });
  if (disturbance.length === 0) throw new StatsError('sample-size', { valueCount: 0, min: 1 });
  let [setting, kept] = [0, 0];
  return disturbance.map((value) => {
    requireWithin({ value });
    const observed = value + gain * setting;
    const forecast = kept + lambda * (observed - target - kept);
    const wanted = Math.abs(forecast) >= deadBand ? -forecast / gain : 0;
    const change = Math.max(-maxChange, Math.min(maxChange, wanted));
    setting += change;
    kept = forecast + gain * change;
    return { observed, forecast, change };
  });
}

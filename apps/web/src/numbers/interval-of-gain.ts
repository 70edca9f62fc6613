import { intervalOfMean, parameterDraws } from '@fillwright/engine/dosing';
import type { NumberInterval } from './number-interval.ts';
import type { PageFacts } from './references/page-facts.ts';

/**
 * How sure the mass per step of a pin is: its ends are those beside the step keys, its shares first order at the means.
 *
 * @param station - of the pin
 * @param facts - candidate with its details
 * @returns central 90 % and shares; undefined for a flush pin
 */
export function intervalOfGain(station: number, facts: PageFacts): NumberInterval | undefined {
  const { candidate, details, input, place, parameters } = facts;
  const { method, context } = place;
  const { settings, prediction } = candidate;
  const key = prediction.stations.find((one) => one.station === station)?.adjuster;
  const gain = details?.gains.settings.find((one) => one.key === key);
  const adjuster = method.adjusters(context, settings).find((one) => one.kind === 'setting' && one.key === key);
  if (!gain || adjuster?.kind !== 'setting') return undefined;
  const at_mm = settings.values[adjuster.key] ?? NaN;
  const { step_mm, machineRange } = adjuster;
  const evaluatorAt = (depth_mm: number) =>
    method.evaluator(context, { ...settings, values: { ...settings.values, [adjuster.key]: depth_mm } });
  const low_mm = Math.max(machineRange.min_mm, at_mm - step_mm);
  const high_mm = Math.min(machineRange.max_mm, at_mm + step_mm);
  const [low, high] = [evaluatorAt(low_mm), evaluatorAt(high_mm)];
  const steps = (high_mm - low_mm) / step_mm;
  const { shares, sd_mg } = intervalOfMean({
    parameters,
    draws: parameterDraws(parameters, input.seed),
    evaluate: (values) => ({ mass_mg: (high(values).mass_mg - low(values).mass_mg) / steps, regime: 0 }),
  });
  return { low90: gain.low90_mg_per_step, high90: gain.high90_mg_per_step, sd: sd_mg, shares };
}

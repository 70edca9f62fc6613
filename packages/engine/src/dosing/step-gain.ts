import type { Range_mm } from '#fillers';
import type { Outcome, ParameterValues } from './dosing.ts';
import { sampleQuantile } from './sample-quantile.ts';

export interface StepGainInput {
  /** Prepares the evaluation with the adjuster at a depth. */
  readonly evaluatorAt: (depth_mm: number) => (values: ParameterValues) => Outcome;
  readonly at_mm: number;
  /** One step of the machine. */
  readonly step_mm: number;
  /** What the machine reaches: at its end the difference is taken to one side. */
  readonly range: Range_mm;
  readonly draws: readonly ParameterValues[];
}

/** What one step of an adjuster does to the mass over what is not known. */
export interface StepGain {
  readonly median_mg_per_step: number;
  readonly low90_mg_per_step: number;
  readonly high90_mg_per_step: number;
}

/**
 * Milligrams per step of one adjuster: difference quotient over one step to either side, draw by draw.
 *
 * @param input - the evaluation, where the adjuster stands, its step and reach, the draws of the interval
 * @returns median and central 90 % over the draws
 * @throws DomainError as the evaluation
 * @source central difference over +-1 machine step under the draws of the interval; this project's choice
 * @validity at these settings; across the change from stop to spring the gain drops at once
 */
export function stepGain({ evaluatorAt, at_mm, step_mm, range, draws }: StepGainInput): StepGain {
  const low_mm = Math.max(range.min_mm, at_mm - step_mm);
  const high_mm = Math.min(range.max_mm, at_mm + step_mm);
  const [low, high] = [evaluatorAt(low_mm), evaluatorAt(high_mm)];
  const steps = (high_mm - low_mm) / step_mm;
  const perStep_mg = new Float64Array(draws.length);
  draws.forEach((values, i) => {
    perStep_mg[i] = (high(values).mass_mg - low(values).mass_mg) / steps;
  });
  perStep_mg.sort();
  return {
    median_mg_per_step: sampleQuantile(perStep_mg, 0.5),
    low90_mg_per_step: sampleQuantile(perStep_mg, 0.05),
    high90_mg_per_step: sampleQuantile(perStep_mg, 0.95),
  };
}

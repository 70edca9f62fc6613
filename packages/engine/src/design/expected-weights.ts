import type { Range_mm } from '#fillers';
import type { DosingContext, DosingMethod, FindingCode, Gains, MeanInterval, Prediction, Settings } from '#dosing';
import { firstWeights, type FirstWeights } from './first-weights.ts';

/** What to turn when the mean of the first weights is inside the forecast but outside the mean limit. */
export interface Correction {
  readonly adjuster: string;
  readonly change_mg_per_step: number;
  readonly step_mm: number;
  /** An example: so far off, so many steps. */
  readonly example_mg: number;
  readonly exampleStepCount: number;
  /** Warnings that the example's move would bring; the sheet names them. */
  readonly brings: readonly FindingCode[];
  /** The example leaves the validated range. */
  readonly isOutsideValidated: boolean;
}

/** The first weights as a decision. */
export interface ExpectedWeights extends FirstWeights {
  /** Mean limits: inside them leave the machine alone. */
  readonly meanLow_mg: number;
  readonly meanHigh_mg: number;
  /** Left out when no part stands on its stop: then disc and spring rule. */
  readonly under?: Correction;
  readonly over?: Correction;
}

export interface ExpectedInput {
  readonly method: DosingMethod;
  readonly context: DosingContext;
  readonly settings: Settings;
  readonly prediction: Prediction;
  readonly interval: MeanInterval;
  readonly gains: Gains;
  readonly target_mg: number;
  readonly meanAction_pct: number;
}

/** The example on the sheet: this share of the target off, in steps that are easily said. */
const EXAMPLE = { share: 0.05, step_mg: 5 } as const;

/**
 * The first weights as a decision: where the mean may lie, when to turn, what and how far.
 *
 * @param input - candidate with its interval and gains, target and mean limit
 * @returns central 98 % of the mean rounded outward to 5 mg (2 mg below 100 mg), mean limits, corrections both ways
 * @throws DomainError as the method's own evaluation
 * @source this project's rule: 90 % would stop one sound start in ten
 * @validity before the first trial; outside the first numbers the model is wrong: stop and measure
 */
export function expectedWeights(input: ExpectedInput): ExpectedWeights {
  const { interval, target_mg, meanAction_pct } = input;
  const half_mg = (target_mg * meanAction_pct) / 100;
  const [under, over] = [correction(input, 1), correction(input, -1)];
  return {
    ...firstWeights({ low98_mg: interval.low98_mg, high98_mg: interval.high98_mg, target_mg }),
    meanLow_mg: target_mg - half_mg,
    meanHigh_mg: target_mg + half_mg,
    ...(under ? { under } : {}),
    ...(over ? { over } : {}),
  };
}

/** The adjuster on its stop with the most validated range left in the direction that adds (1) or takes (-1) mass. */
function correction(input: ExpectedInput, direction: 1 | -1): Correction | undefined {
  const { method, context, settings, gains, prediction } = input;
  const onStop = new Set(
    prediction.stations.filter(({ regime }) => regime === 'on-stop').map(({ adjuster }) => adjuster),
  );
  const choices = method.adjusters(context, settings).flatMap((adjuster) => {
    if (adjuster.kind !== 'setting' || !onStop.has(adjuster.key)) return [];
    const gain = gains.settings.find(({ key }) => key === adjuster.key);
    const at_mm = settings.values[adjuster.key] ?? NaN;
    const { min_mm, max_mm } = adjuster.validatedRange;
    const left_mm = direction === 1 ? max_mm - at_mm : at_mm - min_mm;
    return gain && gain.median_mg_per_step > 0 ? [{ adjuster, gain, at_mm, left_mm }] : [];
  });
  const best = choices.sort((a, b) => b.left_mm - a.left_mm)[0];
  if (!best) return undefined;
  const example_mg = Math.ceil((EXAMPLE.share * input.target_mg) / EXAMPLE.step_mg) * EXAMPLE.step_mg;
  const exampleStepCount = Math.ceil(example_mg / best.gain.median_mg_per_step);
  const moved_mm = best.at_mm + direction * exampleStepCount * best.adjuster.step_mm;
  return {
    adjuster: best.adjuster.key,
    change_mg_per_step: best.gain.median_mg_per_step,
    step_mm: best.adjuster.step_mm,
    example_mg,
    exampleStepCount,
    brings: isWithin(best.adjuster.machineRange, moved_mm)
      ? newWarnings(input, { key: best.adjuster.key, moved_mm })
      : [],
    isOutsideValidated: exampleStepCount * best.adjuster.step_mm > best.left_mm,
  };
}

function isWithin({ min_mm, max_mm }: Range_mm, depth_mm: number): boolean {
  return depth_mm >= min_mm && depth_mm <= max_mm;
}

function newWarnings(input: ExpectedInput, move: { key: string; moved_mm: number }): readonly FindingCode[] {
  const values = { ...input.settings.values, [move.key]: move.moved_mm };
  const before = new Set(input.prediction.warnings.map(({ code }) => code));
  const after = input.method.predict(input.context, { ...input.settings, values }).warnings.map(({ code }) => code);
  return [...new Set(after)].filter((code) => !before.has(code));
}

import type { Quantity } from '#quantity';
import type { Outcome, Parameter, ParameterValues } from './dosing.ts';
import { parameterValue, valuesAtMeans } from './parameter-values.ts';
import { sampleQuantile } from './sample-quantile.ts';

const Z_90 = 1.6448536269514722;
const Z_98 = 2.3263478740408408;
/** Shares that differ by less than this count as equal. */
const SHARE_STEP = 1e-9;

/** What is known of the mean before a trial. */
export interface MeanInterval {
  /** At the means of all parameters. */
  readonly mean_mg: number;
  /** Standard deviation of what is not yet known. */
  readonly sd_mg: number;
  /** Central 90 %. */
  readonly low90_mg: number;
  readonly high90_mg: number;
  /** Central 98 %, for the setting sheet. */
  readonly low98_mg: number;
  readonly high98_mg: number;
  /** `sampled` across the kink where a part changes between stop and spring; else first order. */
  readonly how: 'sampled' | 'first-order';
  /** Share of draws in another regime than at the means. */
  readonly otherRegime_frac: number;
  /** Share of the first-order variance by parameter, largest first. */
  readonly shares: readonly VarianceShare[];
}

/** How much of what is not known comes from one parameter. */
interface VarianceShare {
  readonly key: string;
  readonly share_frac: number;
  readonly basis: Quantity['basis'];
  /** For a guess: the measurement that would halve it. */
  readonly halvedBy?: string;
}

export interface IntervalInput {
  readonly parameters: readonly Parameter[];
  readonly evaluate: (values: ParameterValues) => Outcome;
  /** From `parameterDraws` of the same parameters. */
  readonly draws: readonly ParameterValues[];
}

/**
 * Interval of the mean from the uncertain parameters: 512 quasi-random draws; where none of them changes a regime the
 * response is smooth and the first-order interval is given instead.
 *
 * @param input - parameters with priors, the evaluation, and the draws
 * @returns mean at the prior means, central 90 % and 98 %, shares by parameter
 * @throws DomainError "not-a-number" (a prior without a finite sd)
 * @source JCGM 101:2008 (propagation of distributions) with a Sobol sequence; first order: JCGM 100:2008 5.1.2 (both from memory)
 * @validity parameters independent of each other; the spread between capsules is not in it
 */
export function intervalOfMean({ parameters, evaluate, draws }: IntervalInput): MeanInterval {
  const centre = valuesAtMeans(parameters);
  const atMeans = evaluate(centre);
  const outcomes = draws.map((values) => evaluate(values));
  const otherRegime_frac = outcomes.filter(({ regime }) => regime !== atMeans.regime).length / outcomes.length;
  const slopes_mg = parameters.map((parameter) => firstOrder_mg(parameter, { evaluate, centre }));
  const variance = slopes_mg.reduce((sum, slope) => sum + slope * slope, 0);
  const shares = parameters
    .map(({ key, prior }, i) => {
      const slope = slopes_mg[i] ?? 0;
      const halving = prior.basis === 'guess' ? { halvedBy: prior.halvedBy } : {};
      return { key, share_frac: variance > 0 ? (slope * slope) / variance : 0, basis: prior.basis, ...halving };
    })
    .sort((a, b) => onStep(b.share_frac) - onStep(a.share_frac));
  const shared = { mean_mg: atMeans.mass_mg, otherRegime_frac, shares };
  if (otherRegime_frac > 0) return { ...shared, ...sampled(outcomes.map(({ mass_mg }) => mass_mg)), how: 'sampled' };
  const sd_mg = Math.sqrt(variance);
  const at = (z: number): number => atMeans.mass_mg + z * sd_mg;
  return {
    ...{ ...shared, sd_mg, how: 'first-order' },
    ...{ low90_mg: at(-Z_90), high90_mg: at(Z_90), low98_mg: at(-Z_98), high98_mg: at(Z_98) },
  };
}

/** Equal shares keep the order of the parameters, whatever their last binary digits. */
function onStep(share_frac: number): StepCount {
  return Math.round(share_frac / SHARE_STEP);
}

/** A number of steps: no unit. */
type StepCount = number;

/** Half the change of the mass between one standard deviation above and below the mean of a parameter. */
function firstOrder_mg(
  parameter: Parameter,
  at: { evaluate: IntervalInput['evaluate']; centre: ParameterValues },
): number {
  const [high, low] = [parameterValue(parameter, 1), parameterValue(parameter, -1)];
  const mass_mg = (value: number): number => at.evaluate({ ...at.centre, [parameter.key]: value }).mass_mg;
  return (mass_mg(high) - mass_mg(low)) / 2;
}

function sampled(
  masses_mg: readonly number[],
): Pick<MeanInterval, 'sd_mg' | 'low90_mg' | 'high90_mg' | 'low98_mg' | 'high98_mg'> {
  const sorted = Float64Array.from(masses_mg).sort();
  const mean = masses_mg.reduce((sum, mass) => sum + mass, 0) / masses_mg.length;
  const squares = masses_mg.reduce((sum, mass) => sum + (mass - mean) * (mass - mean), 0);
  return {
    sd_mg: Math.sqrt(squares / (masses_mg.length - 1)),
    low90_mg: sampleQuantile(sorted, 0.05),
    high90_mg: sampleQuantile(sorted, 0.95),
    low98_mg: sampleQuantile(sorted, 0.01),
    high98_mg: sampleQuantile(sorted, 0.99),
  };
}

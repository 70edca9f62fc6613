import { betaCdf, normalQuantile, normalSurvival } from '#distributions';
import { exp, log, requireWithin, StatsError } from '#elementary';
import { sampleSummary } from './sample-summary.ts';

// P. Royston (1995), AS R94; lowest power first.
const FIRST = [0, 0.221157, -0.147981, -2.07119, 4.434685, -2.706056];
const SECOND = [0, 0.042981, -0.293762, -1.752461, 5.682633, -3.582633];
const SMALL = { bound: [-2.273, 0.459], mean: [0.544, -0.39978, 0.025054, -6.714e-4] };
const SMALL_LOG_SD = [1.3822, -0.77857, 0.062767, -0.0020322];
const LARGE_MEAN = [-1.5861, -0.31082, -0.083751, 0.0038915];
const LARGE_LOG_SD = [-0.4803, -0.082676, 0.0030302];

/**
 * Test whether a sample may come from a normal law. It never shows that it does.
 *
 * @param sample - values: 3 to 5000, not all equal
 * @returns statistic W and p value
 * @throws StatsError "sample-size", "not-finite", "out-of-range" (all values equal)
 * @source P. Royston (1995), Appl. Statist. 44, 547-551, algorithm AS R94; S. S. Shapiro, M. B. Wilk (1965)
 * @validity p value to about three figures; values rounded coarsely (many ties) lower it
 */
export function shapiroWilk(sample: { readonly values: readonly number[] }): { statistic: number; pValue: number } {
  const { values } = sample;
  const count = values.length;
  if (count < 3 || count > 5000) throw new StatsError('sample-size', { count, min: 3, max: 5000 });
  const { mean, variance, sd } = sampleSummary(sample);
  requireWithin({ sd }, { above: 0 });
  const sorted = values.map((value) => (value - mean) / sd).sort((one, other) => one - other);
  const weights = weightsOf(count);
  const slope = weights.reduce((sum, weight, i) => sum + weight * (sorted[count - 1 - i]! - sorted[i]!), 0);
  const ratio = (variance / (sd * sd)) * (count - 1);
  const missing = Math.max(0, ((Math.sqrt(ratio) - slope) * (Math.sqrt(ratio) + slope)) / ratio);
  return { statistic: 1 - missing, pValue: pValueOf(missing, count) };
}

/** Weights of the differences greatest - least, next - next, ..., positive. */
function weightsOf(count: number): readonly number[] {
  if (count === 3) return [Math.SQRT1_2];
  const half = Math.floor(count / 2);
  const scores = Array.from({ length: half }, (_, i) => -normalQuantile((i + 1 - 0.375) / (count + 0.25)));
  const squares = 2 * scores.reduce((sum, score) => sum + score * score, 0);
  const [root, inverse] = [Math.sqrt(squares), 1 / Math.sqrt(count)];
  const own = [polynomial(FIRST, inverse) + scores[0]! / root];
  if (count > 5) own.push(polynomial(SECOND, inverse) + scores[1]! / root);
  const taken = own.reduce((sum, _, i) => sum + 2 * scores[i]! * scores[i]!, 0);
  const left = own.reduce((sum, weight) => sum - 2 * weight * weight, 1);
  const factor = Math.sqrt((squares - taken) / left);
  return scores.map((score, i) => own[i] ?? score / factor);
}

/** `missing` is 1 - W. */
function pValueOf(missing: number, count: number): number {
  if (count === 3) return exactOfThree(1 - missing);
  if (missing === 0) return 1;
  if (count <= 11) {
    const bound = polynomial(SMALL.bound, count) - log(missing);
    if (bound <= 0) return 0;
    return normalSurvival((-log(bound) - polynomial(SMALL.mean, count)) / exp(polynomial(SMALL_LOG_SD, count)));
  }
  const x = log(count);
  return normalSurvival((log(missing) - polynomial(LARGE_MEAN, x)) / exp(polynomial(LARGE_LOG_SD, x)));
}

/** 6/pi (arcsin sqrt W - arcsin sqrt 0.75): the arcsine is a beta law. */
function exactOfThree(statistic: number): number {
  return Math.max(0, 3 * betaCdf({ x: statistic, alpha: 0.5, beta: 0.5 }) - 2);
}

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}

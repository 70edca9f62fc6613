import { gaussLegendre, normalCdf, normalQuantile, normalSurvival } from '#distributions';
import { exp, log, requireWhole, requireWithin } from '#elementary';
import { chartConstants } from './chart-constants.ts';
import { secantRoot } from './secant-root.ts';

export interface EstimatedLimits {
  /** Subgroups from which the limits were made. */
  readonly subgroupCount: number;
  readonly subgroupSize: number;
  readonly limitFactor: number;
  /** Shift of the mean in standard deviations of single values; left out: 0. */
  readonly shift?: number;
  /** Where sigma comes from; left out: pooled-sd. */
  readonly sigmaFrom?: 'pooled-sd' | 'mean-sd' | 'mean-range';
}

export interface EstimatedLimitsRunLength {
  /** Probability of a signal at one point, averaged over what the limits may have become. */
  readonly signal_frac: number;
  /** The same mean of the mean run length; absent where it is infinite or rests on rare estimates (fewer than 2 L^2 degrees of freedom). */
  readonly meanRunLength?: number;
  /** Mean run length that 10, 50 and 90 in 100 sets of limits stay below. */
  readonly lowDecile: number;
  readonly median: number;
  readonly highDecile: number;
  /** Degrees of freedom of the estimate of sigma. */
  readonly degreesOfFreedom: number;
}

const RULE = gaussLegendre(48);
const REACH = 8;

/** Chart whose estimates are w (mean, in standard deviations of a subgroup mean) and v (sigma) times the truth. */
interface Conditional {
  readonly limitFactor: number;
  readonly moved: number;
}

/** Law of the estimate of sigma: scale x chi / sqrt(degrees of freedom). */
interface SigmaLaw {
  readonly degreesOfFreedom: number;
  readonly scale: number;
}

/**
 * Run length of a chart of means whose centre and sigma were estimated from subgroups in control.
 *
 * Given an error w of the centre and the ratio v of the sigmas, every point signals with
 * p(w, v) = Phi(-L v + w - d sqrt n) + Phi(-L v - w + d sqrt n); w ~ N(0, 1/m), v ~ chi/sqrt(nu). The mean of p and of 1/p
 * are integrals over both; the law of 1/p follows from P(v <= v(w)), since p falls with v.
 *
 * @param input - subgroupCount 2 to 10000, subgroupSize 2 to 1000, limitFactor 1 to 6, shift -10 to 10, sigmaFrom
 * @returns mean signal probability, mean and deciles of the mean run length, degrees of freedom
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source derived here and checked by simulation; the question: C. P. Quesenberry, J. Qual. Technol. 25 (1993) 237-247 (from memory)
 * @validity normal independent values; exact for the pooled sd (root of the pooled variance, not divided by c4); for the mean sd
 *   and the mean range the chi law with the same mean and variance (P. B. Patnaik, Biometrika 37 (1950) 78-87; from memory)
 */
export function estimatedLimitsRunLength(input: EstimatedLimits): EstimatedLimitsRunLength {
  const { subgroupCount, subgroupSize, limitFactor, shift = 0, sigmaFrom = 'pooled-sd' } = input;
  requireWhole({ subgroupCount }, { min: 2, max: 10_000 });
  requireWhole({ subgroupSize }, { min: 2, max: 1000 });
  requireWithin({ limitFactor }, { min: 1, max: 6 });
  requireWithin({ shift }, { min: -10, max: 10 });
  const chart = { limitFactor, moved: shift * Math.sqrt(subgroupSize) };
  const law = sigmaLaw({ subgroupCount, subgroupSize, sigmaFrom });
  const { degreesOfFreedom } = law;
  const over = (of: (p: number) => number): number => average({ chart, law, subgroupCount }, of);
  const decile = (share: number): number => runLengthQuantile({ chart, law, subgroupCount }, share);
  return {
    ...{ signal_frac: over((p) => p), lowDecile: decile(0.1), median: decile(0.5), highDecile: decile(0.9) },
    degreesOfFreedom,
    ...(degreesOfFreedom < 2 * limitFactor * limitFactor ? {} : { meanRunLength: over((p) => 1 / p) }),
  };
}

function signal({ limitFactor, moved }: Conditional, { w, v }: { w: number; v: number }): number {
  const edge = limitFactor * v;
  return normalCdf(w - moved - edge) + normalSurvival(edge + w - moved);
}

function sigmaLaw({
  subgroupCount,
  subgroupSize,
  sigmaFrom,
}: Required<Pick<EstimatedLimits, 'subgroupCount' | 'subgroupSize' | 'sigmaFrom'>>): SigmaLaw {
  if (sigmaFrom === 'pooled-sd') return { degreesOfFreedom: subgroupCount * (subgroupSize - 1), scale: 1 };
  const { c4, d2, d3 } = chartConstants({ n: subgroupSize });
  const single = sigmaFrom === 'mean-sd' ? (1 - c4 * c4) / (c4 * c4) : (d3 * d3) / (d2 * d2);
  const wanted = single / subgroupCount;
  const excess = (logFreedom: number): number => {
    const mean = chiMean(exp(logFreedom));
    return log(wanted) - log(1 / (mean * mean) - 1);
  };
  const degreesOfFreedom = exp(
    secantRoot(excess, { guess: -log(2 * wanted), step: 0.05, above: -2, tolerance: 1e-10 }),
  );
  return { degreesOfFreedom, scale: 1 / chiMean(degreesOfFreedom) };
}

/** Mean of chi / sqrt(degrees of freedom). */
function chiMean(degreesOfFreedom: number): number {
  const [from, to] = bulk(degreesOfFreedom);
  return (
    chiIntegral({ degreesOfFreedom, from, to, of: (v) => v }) / chiIntegral({ degreesOfFreedom, from, to, of: () => 1 })
  );
}

/** Where chi / sqrt(degrees of freedom) lies but for about 1e-13. */
function bulk(degreesOfFreedom: number): [number, number] {
  const spread = REACH / Math.sqrt(2 * degreesOfFreedom);
  return [Math.max(0, 1 - spread), 1 + spread * 1.1];
}

interface ChiIntegral {
  readonly degreesOfFreedom: number;
  readonly from: number;
  readonly to: number;
  readonly of: (v: number) => number;
}

/** Integral of a function times v^(nu - 1) exp(-nu (v^2 - 1) / 2), not normalised. */
function chiIntegral({ degreesOfFreedom, from, to, of }: ChiIntegral): number {
  const half = 0.5 * (to - from);
  let sum = 0;
  for (let i = 0; i < RULE.nodes.length; i++) {
    const v = from + half * (1 + RULE.nodes[i]!);
    const density = exp((degreesOfFreedom - 1) * log(v) - 0.5 * degreesOfFreedom * (v * v - 1));
    sum += RULE.weights[i]! * density * of(v);
  }
  return half * sum;
}

interface Estimates {
  readonly chart: Conditional;
  readonly law: SigmaLaw;
  readonly subgroupCount: number;
}

/** Mean of a function of p(w, v). */
function average({ chart, law, subgroupCount }: Estimates, of: (p: number) => number): number {
  const { degreesOfFreedom, scale } = law;
  const [from, far] = bulk(degreesOfFreedom);
  const to = 1 + (far - 1) * 1.6;
  const total = chiIntegral({ degreesOfFreedom, from, to, of: () => 1 });
  return centreAverage(
    subgroupCount,
    (w) => chiIntegral({ degreesOfFreedom, from, to, of: (v) => of(signal(chart, { w, v: scale * v })) }) / total,
  );
}

function centreAverage(subgroupCount: number, of: (w: number) => number): number {
  let [sum, total] = [0, 0];
  for (let i = 0; i < RULE.nodes.length; i++) {
    const z = REACH * RULE.nodes[i]!;
    const weight = RULE.weights[i]! * exp(-0.5 * z * z);
    total += weight;
    sum += weight * of(z / Math.sqrt(subgroupCount));
  }
  return sum / total;
}

/** Run length x with P(1/p <= x) = share. */
function runLengthQuantile({ chart, law, subgroupCount }: Estimates, share: number): number {
  const { degreesOfFreedom, scale } = law;
  const [from, to] = bulk(degreesOfFreedom);
  const total = chiIntegral({ degreesOfFreedom, from, to, of: () => 1 });
  const shareBelow = (logLength: number): number =>
    centreAverage(subgroupCount, (w) => {
      const v = ratioOf(chart, { w, logLength }) / scale;
      if (v <= from) return 0;
      return v >= to ? 1 : chiIntegral({ degreesOfFreedom, from, to: v, of: () => 1 }) / total;
    });
  const middle = -log(signal(chart, { w: 0, v: scale }));
  const z = normalQuantile(share);
  const excess = (x: number): number => normalQuantile(Math.min(1 - 1e-14, Math.max(1e-14, shareBelow(x)))) - z;
  return exp(secantRoot(excess, { guess: middle, step: 0.1, above: 0, tolerance: 1e-9 }));
}

/** The ratio of the sigmas at which a chart with centre error w has this mean run length. */
function ratioOf(chart: Conditional, { w, logLength }: { w: number; logLength: number }): number {
  const excess = (v: number): number => -log(signal(chart, { w, v })) - logLength;
  if (excess(1e-6) >= 0) return 0;
  return secantRoot(excess, { guess: 1, step: 0.05, above: 0, tolerance: 1e-11 });
}

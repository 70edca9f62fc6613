import { normalCdf, normalQuantile } from '#distributions';
import { exp, log, pow, requireWhole, requireWithin } from '#elementary';
import { type CapabilityLaw, capabilityPercentile, type CapabilityPercentiles, sampleQuantile } from '#inference';
import { fillNormals, nextUniform, seedStream } from '#random';
import { fittedLaw, type FittedLawName } from './fitted-law.ts';

/** A sample whose law is named by the caller, who has looked whether it fits. */
export interface SampleOfLaw {
  readonly values: readonly number[];
  readonly law: FittedLawName;
  readonly lower?: number;
  readonly upper?: number;
  readonly confidence?: number;
  readonly seed?: number;
  readonly resampleCount?: number;
}

export interface SampleCapability {
  readonly fitted: CapabilityLaw;
  readonly found: CapabilityPercentiles;
  readonly ppk: IndexLimits;
  /** Two limits only. */
  readonly pp: IndexLimits | undefined;
}

interface IndexLimits {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Performance of a sample by the percentile method, with limits: the law is fitted, its 0.135 %, 50 % and 99.865 % points give
 * the indices, and samples drawn again from the fitted law and fitted again give their limits (parametric bootstrap,
 * bias-corrected).
 *
 * @param sample - values: 3 to 2000; law: normal, lognormal, Weibull or half-normal; lower, upper: one at least; confidence:
 *   0.95 unless given; seed: whole, 1 unless given; resampleCount: 200 to 20 000, 2000 unless given
 * @returns fitted law, its percentile indices, limits of Ppk and Pp
 * @throws StatsError "sample-size", "not-finite", "not-whole", "out-of-range" (a value that the law cannot have)
 * @source ISO 22514-2 (secondary), percentile method; limits: B. Efron, R. J. Tibshirani, An Introduction to the Bootstrap
 *   (1993), 14.3 and 6.5 (from memory)
 * @validity the law must be the right one: its 99.865 % point lies beyond most samples. Few values make the limits too narrow
 */
export function capabilityOfSample(sample: SampleOfLaw): SampleCapability {
  const { values, law, confidence = 0.95, seed = 1, resampleCount = 2000 } = sample;
  requireWithin({ confidence }, { above: 0, below: 1 });
  requireWhole({ resampleCount }, { min: 200, max: 20_000 });
  requireWhole({ count: values.length }, { min: 3, max: 2000 });
  const limits = {
    ...(sample.lower !== undefined && { lower: sample.lower }),
    ...(sample.upper !== undefined && { upper: sample.upper }),
  };
  const fitted = fittedLaw(values, law);
  const found = capabilityPercentile({ ...limits, of: fitted });
  const [ppks, pps]: [number[], number[]] = [[], []];
  const draw = drawerOf(fitted, { count: values.length, seed });
  for (let i = 0; i < resampleCount; i++) {
    const again = capabilityPercentile({ ...limits, of: fittedLaw(draw(i), law) });
    ppks.push(again.ppk);
    if (again.pp !== undefined) pps.push(again.pp);
  }
  return {
    ...{ fitted, found, ppk: limitsOf(found.ppk, ppks, confidence) },
    pp: found.pp === undefined ? undefined : limitsOf(found.pp, pps, confidence),
  };
}

/** One sample of the fitted law; each comes from a stream of its own. */
function drawerOf(
  fitted: CapabilityLaw,
  { count, seed }: { readonly count: number; readonly seed: number },
): (chunk: number) => readonly number[] {
  const scores = new Float64Array(count);
  const normals = (chunk: number): Float64Array => {
    fillNormals(seedStream({ seed, chunk }), scores);
    return scores;
  };
  return (chunk) => {
    if (fitted.law === 'normal') return Array.from(normals(chunk), (z) => fitted.mean + fitted.sd * z);
    if (fitted.law === 'lognormal') return Array.from(normals(chunk), (z) => exp(fitted.mu + fitted.sigma * z));
    if (fitted.law === 'half-normal') return Array.from(normals(chunk), (z) => fitted.scale * Math.abs(z));
    const stream = seedStream({ seed, chunk });
    return Array.from({ length: count }, () => fitted.scale * pow(-log(nextUniform(stream)), 1 / fitted.shape));
  };
}

/** Bias-corrected percentiles: the share of resamples below what was found moves both ends. */
function limitsOf(value: number, again: readonly number[], confidence: number): IndexLimits {
  const below = again.filter((one) => one < value).length / again.length;
  const bias = normalQuantile(Math.min(Math.max(below, 0.5 / again.length), 1 - 0.5 / again.length));
  const z = normalQuantile(0.5 * (1 - confidence));
  const [low, high] = [z, -z].map((end) =>
    sampleQuantile({ values: again, p: normalCdf(2 * bias + end), definition: 'hyndman-fan-7' }),
  ) as [number, number];
  return { value, low, high };
}

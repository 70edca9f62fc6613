import { gammaQuantile, gammaSurvival, gammaCdf, normalCdf, normalQuantile, normalSurvival } from '#distributions';
import { exp, log, pow, requireWithin } from '#elementary';
import { type CapabilityLimits, requireCapabilityLimits } from './capability-limits.ts';

/** Laws of which the percentile method knows the quantiles. */
export type CapabilityLaw =
  | { readonly law: 'normal'; readonly mean: number; readonly sd: number }
  | { readonly law: 'lognormal'; readonly mu: number; readonly sigma: number }
  | { readonly law: 'weibull'; readonly shape: number; readonly scale: number }
  | { readonly law: 'half-normal'; readonly scale: number }
  | { readonly law: 'gamma'; readonly shape: number; readonly scale: number };

/** Performance by percentiles; what needs a limit that is not there is missing. */
export interface CapabilityPercentiles {
  readonly low: number;
  readonly median: number;
  readonly high: number;
  readonly pp: number | undefined;
  readonly ppu: number | undefined;
  readonly ppl: number | undefined;
  readonly ppk: number;
  readonly outside_ppm: number;
}

const TAIL = 0.00135;

interface Tails {
  /** Value with this probability below it, or above it. */
  readonly at: (p: number, tail: 'lower' | 'upper') => number;
  readonly below: (x: number) => number;
  readonly above: (x: number) => number;
}

/**
 * Capability of a law that need not be normal: 0.135 %, 50 % and 99.865 % points stand for mean and three sd.
 *
 * @param input - law with its parameters; lower, upper: one limit at least
 * @returns percentiles, Pp, the index of each side, the smaller one, parts per million outside
 * @throws StatsError "not-finite", "out-of-range"
 * @source ISO 22514-2 (secondary), percentile method
 * @validity the law must be known: fitted to 50 values its 99.865 % point is extrapolated
 */
export function capabilityPercentile(input: CapabilityLimits & { readonly of: CapabilityLaw }): CapabilityPercentiles {
  const { lower, upper } = input;
  requireCapabilityLimits({ lower, upper });
  const { at, below, above } = tailsOf(input.of);
  const [low, median, high] = [at(TAIL, 'lower'), at(0.5, 'lower'), at(TAIL, 'upper')];
  const ppu = upper === undefined ? undefined : (upper - median) / (high - median);
  const ppl = lower === undefined ? undefined : (median - lower) / (median - low);
  return {
    ...{ low, median, high, ppu, ppl, ppk: Math.min(ppu ?? Infinity, ppl ?? Infinity) },
    pp: lower === undefined || upper === undefined ? undefined : (upper - lower) / (high - low),
    outside_ppm: 1e6 * ((lower === undefined ? 0 : below(lower)) + (upper === undefined ? 0 : above(upper))),
  };
}

function tailsOf(of: CapabilityLaw): Tails {
  if (of.law === 'normal') {
    const { mean, sd } = of;
    requireWithin({ mean });
    requireWithin({ sd }, { above: 0 });
    return normalTails(
      (z) => mean + z * sd,
      (x) => (x - mean) / sd,
    );
  }
  if (of.law === 'lognormal') {
    const { mu, sigma } = of;
    requireWithin({ mu });
    requireWithin({ sigma }, { above: 0 });
    return normalTails(
      (z) => exp(mu + z * sigma),
      (x) => (x > 0 ? (log(x) - mu) / sigma : -Infinity),
    );
  }
  const { scale } = of;
  requireWithin({ scale }, { above: 0 });
  if (of.law === 'half-normal') {
    return {
      at: (p, tail) => scale * normalQuantile(tail === 'lower' ? 0.5 + 0.5 * p : 1 - 0.5 * p),
      below: (x) => (x > 0 ? 1 - 2 * normalSurvival(x / scale) : 0),
      above: (x) => (x > 0 ? 2 * normalSurvival(x / scale) : 1),
    };
  }
  const { shape } = of;
  requireWithin({ shape }, { above: 0 });
  if (of.law === 'gamma') {
    return {
      at: (p, tail) => gammaQuantile({ p, shape, scale, tail }),
      below: (x) => (x > 0 ? gammaCdf({ x, shape, scale }) : 0),
      above: (x) => (x > 0 ? gammaSurvival({ x, shape, scale }) : 1),
    };
  }
  // Weibull: (X/scale)^shape is exponential, the gamma law of shape 1.
  const exponential = (x: number): number => (x > 0 ? pow(x / scale, shape) : 0);
  return {
    at: (p, tail) => scale * pow(-log(tail === 'lower' ? 1 - p : p), 1 / shape),
    below: (x) => (x > 0 ? gammaCdf({ x: exponential(x), shape: 1 }) : 0),
    above: (x) => exp(-exponential(x)),
  };
}

function normalTails(valueOf: (z: number) => number, scoreOf: (x: number) => number): Tails {
  return {
    at: (p, tail) => valueOf(tail === 'lower' ? normalQuantile(p) : -normalQuantile(p)),
    below: (x) => normalCdf(scoreOf(x)),
    above: (x) => normalSurvival(scoreOf(x)),
  };
}

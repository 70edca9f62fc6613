import { exp, log, pow, requireWithin, StatsError } from '#elementary';
import { type CapabilityLaw, sampleSummary } from '#inference';
import { bracketedRoot } from '#numerics';

/** Laws that can be fitted to a sample in closed form or by one root. */
export type FittedLawName = 'normal' | 'lognormal' | 'weibull' | 'half-normal';

/**
 * The law of a kind that fits a sample: maximum likelihood, for normal and lognormal with the n - 1 form of the standard
 * deviation.
 *
 * @param values - three at least, finite, not all alike; above 0 for lognormal and Weibull, from 0 for half-normal
 * @param law - the kind
 * @returns law and parameters
 * @throws StatsError "sample-size", "not-finite", "out-of-range" (a value that the law cannot have, values all alike)
 * @source maximum likelihood; Weibull: N. L. Johnson, S. Kotz, N. Balakrishnan, Continuous Univariate Distributions 1 (1994), 21.5
 *   (from memory)
 * @validity independent values of one law
 */
export function fittedLaw(values: readonly number[], law: FittedLawName): CapabilityLaw {
  const count = values.length;
  if (count < 3) throw new StatsError('sample-size', { count, min: 3 });
  for (const value of values) requireWithin({ value }, leastOf(law));
  const { mean, sd } = sampleSummary({ values });
  requireWithin({ sd }, { above: 0 });
  if (law === 'normal') return { law, mean, sd };
  if (law === 'half-normal')
    return { law, scale: Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / count) };
  const logs = values.map((value) => log(value));
  const { mean: mu, sd: sigma } = sampleSummary({ values: logs });
  return law === 'lognormal' ? { law, mu, sigma } : weibull(logs, { mu, sigma });
}

function leastOf(law: FittedLawName): { readonly above?: number; readonly min?: number } {
  if (law === 'normal') return {};
  return law === 'half-normal' ? { min: 0 } : { above: 0 };
}

/** The shape solves S1(k)/S0(k) - 1/k = mean log; logs are taken less their largest, so that no power overflows. */
function weibull(
  logs: readonly number[],
  { mu, sigma }: { readonly mu: number; readonly sigma: number },
): CapabilityLaw {
  const top = Math.max(...logs);
  const sums = (shape: number) => {
    let [s0, s1] = [0, 0];
    for (const one of logs) {
      const weight = exp(shape * (one - top));
      s0 += weight;
      s1 += weight * one;
    }
    return { s0, s1 };
  };
  const score = (shape: number): number => {
    const { s0, s1 } = sums(shape);
    return s1 / s0 - 1 / shape - mu;
  };
  // The sd of log values is pi/sqrt(6)/shape; the root lies near 1.2825/sigma.
  const near = 1.2825498301618641 / sigma;
  let [from, to] = [near / 1.5, near * 1.5];
  while (score(from) > 0) from /= 2;
  while (score(to) < 0) to *= 2;
  const shape = bracketedRoot(score, { from, to, tolerance: 1e-11 * near });
  return { law: 'weibull', shape, scale: exp(top) * pow(sums(shape).s0 / logs.length, 1 / shape) };
}

import { requireWithin, StatsError } from '#elementary';

/** Which definition of a sample quantile: numbers of R. J. Hyndman, Y. Fan (1996). */
export type QuantileDefinition = 'hyndman-fan-6' | 'hyndman-fan-7' | 'hyndman-fan-8';

/** Position of the quantile p among n sorted values: (n + 1 - a - b) p + a. */
const OFFSETS = {
  'hyndman-fan-6': { a: 0, b: 0 },
  'hyndman-fan-7': { a: 1, b: 1 },
  'hyndman-fan-8': { a: 1 / 3, b: 1 / 3 },
} as const satisfies Record<QuantileDefinition, { a: number; b: number }>;

/**
 * Quantile of a sample; p = 0.5 gives the median under every definition.
 *
 * @param sample - values: one at least; p: 0 to 1; definition: 6 (p of the next value), 7 (R and most spreadsheets) or 8 (median unbiased; 8 unless given)
 * @returns the quantile, in the unit of the data, never outside the sample
 * @throws StatsError "sample-size", "not-finite", "out-of-range"
 * @source R. J. Hyndman, Y. Fan (1996), Am. Stat. 50, 361-365, definitions 6 to 8
 */
export function sampleQuantile(sample: {
  readonly values: readonly number[];
  readonly p: number;
  readonly definition?: QuantileDefinition;
}): number {
  const { values, p, definition = 'hyndman-fan-8' } = sample;
  const count = values.length;
  if (count < 1) throw new StatsError('sample-size', { count, min: 1 });
  for (const value of values) requireWithin({ value });
  requireWithin({ p }, { min: 0, max: 1 });
  const sorted = [...values].sort((one, other) => one - other);
  const { a, b } = OFFSETS[definition];
  const position = Math.max(1, Math.min(count, (count + 1 - a - b) * p + a));
  const below = Math.floor(position + 1e-12);
  const low = sorted[below - 1]!;
  const high = sorted[Math.min(count, below + 1) - 1]!;
  return low + Math.max(0, position - below) * (high - low);
}

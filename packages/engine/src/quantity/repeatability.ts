import type { Measured } from './quantity.ts';

/** Repeatability of one measurement by method, as a share of the value or in mm. @source common practice, no source */
export const REPEATABILITY = {
  /** Poured, tapped or feed density in a cylinder or cup. */
  densityShare_frac: 0.02,
  /** A length by calliper or gauge. */
  length_mm: 0.02,
  /** Constants of a compression law fitted to one press curve. */
  lawConstantShare_frac: 0.05,
  /** Forces of springs, springback, friction and other ratios from one test. */
  ratioShare_frac: 0.05,
  /** A relative standard deviation from ten units: sd(s)/s = 1/sqrt(2 (n - 1)) of normal values, n = 10 a guess. */
  spreadShare_frac: 0.24,
} as const;

/** What was measured: decides the repeatability of a value that came without its own. */
export type MeasuredKind = 'density' | 'length' | 'law-constant' | 'ratio' | 'spread';

/**
 * A single value that came without a spread: its sd is the repeatability of the method, and it says so.
 *
 * @param input - value: the measured number in the unit of its key; kind: what was measured
 * @returns a measured quantity, n = 1, flagged `sdAssumed`
 * @throws never
 * @source common practice, no source
 */
export function singleMeasurement({ value, kind }: { value: ValueOfKey; kind: MeasuredKind }): Measured {
  const sd = {
    density: REPEATABILITY.densityShare_frac * value,
    length: REPEATABILITY.length_mm,
    'law-constant': REPEATABILITY.lawConstantShare_frac * value,
    ratio: REPEATABILITY.ratioShare_frac * value,
    spread: REPEATABILITY.spreadShare_frac * value,
  }[kind];
  return { basis: 'measured', mean: value, sd, n: 1, sdAssumed: true };
}

/** A number in the unit of the key it was given under. */
type ValueOfKey = number;

import { chiSquareQuantile, normalCdf, normalQuantile, normalSurvival } from '#distributions';
import { requireWhole, requireWithin } from '#elementary';
import { type CapabilityLimits, requireCapabilityLimits } from './capability-limits.ts';

/** An index with its limits; `lowerOneSided` is the bound to quote if only too small an index matters. */
export interface BoundedIndex {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly lowerOneSided: number;
}

/** Capability from mean and standard deviation; what needs both limits is missing when one is. */
export interface CapabilityIndices {
  readonly cp: BoundedIndex | undefined;
  readonly cpm: number | undefined;
  readonly cpk: BoundedIndex;
  readonly cpu: number | undefined;
  readonly cpl: number | undefined;
  /** Expected outside the limits in parts per million, for a normal law with just this mean and sd. */
  readonly outside_ppm: number;
}

/**
 * Capability indices with their confidence limits. With the sd within subgroups they are called Cp and Cpk, with the sd of
 * all values Pp and Ppk: the caller says which.
 *
 * @param input - n: values behind the mean, 2 to 1e7; sd: above 0; lower, upper: one at least; target for Cpm;
 *   degreesOfFreedom of the sd: n - 1 unless given; confidence: 0.95 unless given
 * @returns Cp with chi-square limits, Cpk with Bissell's, the index of each side, Cpm (two limits and a target), expected outside
 * @throws StatsError "not-finite", "out-of-range", "not-whole"; no index without n
 * @source A. F. Bissell (1990), Appl. Statist. 39, 331-340 (from memory); NIST/SEMATECH e-Handbook 6.1.6 (from memory);
 *   Cpm: L. K. Chan, S. W. Cheng, F. A. Spiring (1988), J. Qual. Technol. 20, 162-175 (from memory)
 * @validity normal values from a process in control; Bissell's limits belong to the side that decides, approximate below n = 30
 */
export function capabilityIndices(
  input: CapabilityLimits & {
    readonly n: number;
    readonly mean: number;
    readonly sd: number;
    readonly target?: number;
    readonly degreesOfFreedom?: number;
    readonly confidence?: number;
  },
): CapabilityIndices {
  const { n, mean, sd, lower, upper, target, degreesOfFreedom = n - 1, confidence = 0.95 } = input;
  requireWhole({ n }, { min: 2, max: 1e7 });
  requireWithin({ sd }, { above: 0 });
  requireWithin({ degreesOfFreedom }, { min: 1, max: 1e7 });
  requireWithin({ confidence }, { above: 0, below: 1 });
  requireWithin(target === undefined ? { mean } : { mean, target });
  requireCapabilityLimits({ lower, upper });
  const cpu = upper === undefined ? undefined : (upper - mean) / (3 * sd);
  const cpl = lower === undefined ? undefined : (mean - lower) / (3 * sd);
  const both = widthIndex(input);
  return {
    cp: both === undefined ? undefined : spreadIndex(both, { degreesOfFreedom, confidence }),
    cpm: both === undefined || target === undefined ? undefined : both / offTarget((mean - target) / sd),
    cpk: sideIndex(Math.min(cpu ?? Infinity, cpl ?? Infinity), { n, degreesOfFreedom, confidence }),
    ...{ cpu, cpl, outside_ppm: 1e6 * outsideOf(cpl, cpu) },
  };
}

function widthIndex({ lower, upper, sd }: CapabilityLimits & { readonly sd: number }): number | undefined {
  return lower === undefined || upper === undefined ? undefined : (upper - lower) / (6 * sd);
}

function offTarget(distance: number): number {
  return Math.sqrt(1 + distance * distance);
}

function outsideOf(cpl: number | undefined, cpu: number | undefined): number {
  const below = cpl === undefined ? 0 : normalCdf(-3 * cpl);
  return below + (cpu === undefined ? 0 : normalSurvival(3 * cpu));
}

interface Asked {
  readonly degreesOfFreedom: number;
  readonly confidence: number;
}

function spreadIndex(value: number, { degreesOfFreedom, confidence }: Asked): BoundedIndex {
  const at = (p: number, tail: 'lower' | 'upper'): number =>
    value * Math.sqrt(chiSquareQuantile({ p, degreesOfFreedom, tail }) / degreesOfFreedom);
  const rest = 1 - confidence;
  return { value, low: at(0.5 * rest, 'lower'), high: at(0.5 * rest, 'upper'), lowerOneSided: at(rest, 'lower') };
}

function sideIndex(value: number, { n, degreesOfFreedom, confidence }: Asked & { readonly n: number }): BoundedIndex {
  const error = Math.sqrt(1 / (9 * n) + (value * value) / (2 * degreesOfFreedom));
  const twoSided = -normalQuantile(0.5 * (1 - confidence)) * error;
  const lowerOneSided = value - normalQuantile(confidence) * error;
  return { value, low: value - twoSided, high: value + twoSided, lowerOneSided };
}

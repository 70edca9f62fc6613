import { requireWithin } from '#elementary';
import { bracketedRoot } from '#numerics';
import { LARGEST_ACCEPTANCE_VALUE, referenceZone } from './dosage-unit-rules.ts';
import type { KnownBatch } from './passing-bound.ts';
import { secondStage, withinLimit } from './passing-bound.ts';
import { probabilityOfPassingDosageUnits } from './probability-of-passing-dosage-units.ts';

/** What is to be assured: a probability of passing, by the bound of the practice or by the exact probability. */
export interface ContourInput {
  readonly coverage: number;
  readonly target?: number;
  readonly basis: 'bound' | 'exact';
}

/**
 * Largest standard deviation by batch mean: equidistant nodes from `from` on. Of several lines (the stages of the bound) the
 * upper one counts.
 */
export interface AcceptanceContour extends Required<ContourInput> {
  readonly from: number;
  readonly step: number;
  readonly lines: readonly Float64Array[];
}

/** Six-point interpolation at this distance is good to 6e-6. */
const STEP = 0.25;
const LARGEST_SD = 60;
const TOLERANCE = 1e-8;
const SETTLED = 1e-6;
const SHORTEST_SECANT = 1e-4;

/**
 * Where the probability of passing equals the coverage: the standard deviation for each batch mean, in % of claim. It does not
 * depend on the number of units nor on the confidence, so one contour serves every table (`acceptanceLimits`).
 *
 * @param input - coverage: probability of passing, from 0.5, at most 0.9999; target: T, above 0, at most 120, default 100; basis:
 *   "bound" (ASTM E2709/E2810) or "exact" (`probabilityOfPassingDosageUnits`)
 * @returns the contour between the means that can pass at all
 * @throws StatsError "not-finite", "out-of-range"
 * @source ASTM E2709, E2810; J. S. Bergum, H. Li (2007), Pharm. Technol. 31(10); exact: this project's choice
 * @validity standard deviation good to 1e-5
 */
export function acceptanceContour({ coverage, target = 100, basis }: ContourInput): AcceptanceContour {
  requireWithin({ coverage }, { min: 0.5, max: 0.9999 });
  requireWithin({ target }, { above: 0, max: 120 });
  const { low, high } = referenceZone(target);
  const from = low - LARGEST_ACCEPTANCE_VALUE;
  const width = high + LARGEST_ACCEPTANCE_VALUE - from;
  const count = Math.ceil(width / STEP);
  const nodes = { from, step: width / count, count };
  const lines = PROBABILITIES[basis].map((probability) =>
    lineOf(({ mean, sd }) => probability({ mean, sd, target }) - coverage, nodes),
  );
  return { coverage, target, basis, from, step: nodes.step, lines };
}

const PROBABILITIES: Readonly<Record<ContourInput['basis'], readonly ((batch: Required<KnownBatch>) => number)[]>> = {
  exact: [probabilityOfPassingDosageUnits],
  bound: [(batch) => withinLimit(batch, 10), bothOfStage2],
};

function bothOfStage2(batch: Required<KnownBatch>): number {
  const { acceptanceValueOf30, unitsOf30 } = secondStage(batch);
  return acceptanceValueOf30 + unitsOf30 - 1;
}

type Excess = (at: { readonly mean: number; readonly sd: number }) => number;

interface Nodes {
  readonly from: number;
  readonly step: number;
  readonly count: number;
}

/**
 * From node to node: the guess continues the line; the steepness (change of the probability by relative change of sd), nearly
 * the same everywhere, is that of the last root.
 */
function lineOf(excess: Excess, { from, step, count }: Nodes): Float64Array {
  const sds = new Float64Array(count + 1);
  let steepness = NaN;
  for (let i = 1; i < count; i++) {
    const excessOf = (sd: number): number => excess({ mean: from + i * step, sd });
    const found = nearGuess(excessOf, { guess: continued(sds, i), steepness }) ?? searched(excessOf);
    sds[i] = found.sd;
    steepness = found.steepness;
  }
  return sds;
}

function continued(sds: Float64Array, i: number): number {
  const before = (k: number): number => sds[i - k]!;
  if (i < 4) return i < 2 ? 0 : 2 * before(1) - before(2);
  return 4 * (before(1) + before(3)) - 6 * before(2) - before(4);
}

interface RootFound {
  readonly sd: number;
  readonly steepness: number;
}

function searched(excess: (sd: number) => number): RootFound {
  const sd = bracketedRoot((x) => -excess(x), { from: 0, to: LARGEST_SD, tolerance: TOLERANCE });
  const d = 1e-3;
  return { sd, steepness: (excess(sd * (1 + d)) - excess(sd * (1 - d))) / (2 * d) };
}

/** Secant steps beside the guess; undefined when they do not settle at once. Short steps would only measure noise. */
function nearGuess(
  excess: (sd: number) => number,
  { guess, steepness }: { readonly guess: number; readonly steepness: number },
): RootFound | undefined {
  if (!(steepness < 0 && guess > 0)) return undefined;
  let sd = guess;
  let slope = steepness / sd;
  let value = excess(sd);
  for (let step = 0; step < 6; step++) {
    const change = -value / slope;
    if (!(Math.abs(change) < 0.2 * sd)) return undefined;
    const next = sd + change;
    if (Math.abs(change) < SETTLED) return { sd: next, steepness: slope * next };
    const nextValue = excess(next);
    const secant = (nextValue - value) / change;
    if (Math.abs(change) > SHORTEST_SECANT * sd && secant < 0) slope = secant;
    sd = next;
    value = nextValue;
  }
  return undefined;
}

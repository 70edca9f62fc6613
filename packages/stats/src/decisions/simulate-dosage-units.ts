import { requireWhole, requireWithin, StatsError } from '#elementary';
import { seedStream } from '#random';
import type { DosageUnitLimits } from './dosage-unit-rules.ts';
import { DOSAGE_UNIT_LIMITS, referenceZone } from './dosage-unit-rules.ts';
import type { MixtureTable, Tally } from './simulate-dosage-units.kernel.ts';
import { LEADING_BITS, simulateTests, UNSETTLED } from './simulate-dosage-units.kernel.ts';

/** Units of one kind: the contents from one bore, or missing fills (mean 0, sd 0); in % of claim. */
export interface UnitKind {
  readonly mean: number;
  readonly sd: number;
  /** Any positive measure; the shares of all kinds are divided by their sum. */
  readonly share: number;
}

export interface SimulationInput {
  readonly kinds: readonly UnitKind[];
  readonly target?: number;
  readonly limits?: DosageUnitLimits;
  readonly testCount: number;
  readonly seed: number;
  /** Chunks to run, for sharing a job out; left out: all of them. */
  readonly chunks?: { readonly from: number; readonly to: number };
}

export interface SimulatedPass {
  readonly testCount: number;
  readonly passCount: number;
  /** Of the passes, those at stage 1. */
  readonly stage1Count: number;
  readonly pass_frac: number;
  /** Standard error of the share. */
  readonly standardError: number;
}

/** Every job is cut into this many chunks, whoever runs them. */
export const SIMULATION_CHUNKS = 64;
const WORDS = 4294967296;

/**
 * Simulates the two-stage test of the uniformity of dosage units for units of several kinds: bores with means of their own,
 * missing or short fills. For normal contents of one kind `probabilityOfPassingDosageUnits` is exact and faster.
 *
 * @param input - kinds: 1 to 254, mean and sd (from 0) in % of claim, share above 0; target: T, above 0, at most 120, default
 *   100; limits: default L1 15, L2 25; testCount: whole, from 64, at most 1e10; seed: whole, 0 to 2^32 - 1; chunks: from 0 up to but not
 *   including `to`, at most 64; left out: all
 * @returns counts and the share that passes; the counts of any split of the chunks add up to those of the whole
 * @throws StatsError "sample-size" (number of kinds), "not-finite", "not-whole", "out-of-range"
 * @source Ph. Eur. 2.9.40, USP <905>, table 2; chunks with streams of their own: seedStream
 * @validity independent units; kinds drawn by their shares to 1 in 2^32; acceptance values not rounded
 */
export function simulateDosageUnits(input: SimulationInput): SimulatedPass {
  const { kinds, target = 100, limits = DOSAGE_UNIT_LIMITS, testCount, seed } = input;
  const { chunks = { from: 0, to: SIMULATION_CHUNKS } } = input;
  const { acceptanceValue, unitDeviation_pct } = limits;
  requireWithin({ target }, { above: 0, max: 120 });
  requireWithin({ acceptanceValue }, { above: 0 });
  requireWithin({ unitDeviation_pct }, { above: 0, below: 100 });
  requireWhole({ testCount }, { min: SIMULATION_CHUNKS, max: 1e10 });
  requireWhole({ from: chunks.from }, { min: 0, max: SIMULATION_CHUNKS - 1 });
  requireWhole({ to: chunks.to }, { min: chunks.from + 1, max: SIMULATION_CHUNKS });
  const mixture = mixtureOf(kinds);
  const zone = referenceZone(target);
  const rules = { zone, acceptanceLimit: acceptanceValue, unitShare: unitDeviation_pct / 100 };
  const total: Tally = { passCount: 0, stage1Count: 0 };
  let simulated = 0;
  for (let chunk = chunks.from; chunk < chunks.to; chunk++) {
    const job = { rules, testCount: upTo(testCount, chunk + 1) - upTo(testCount, chunk) };
    const tally = simulateTests(seedStream({ seed, chunk }), mixture, job);
    total.passCount += tally.passCount;
    total.stage1Count += tally.stage1Count;
    simulated += job.testCount;
  }
  const pass_frac = total.passCount / simulated;
  const standardError = Math.sqrt((pass_frac * (1 - pass_frac)) / simulated);
  return { testCount: simulated, ...total, pass_frac, standardError };
}

/** Tests in the first chunks of a job. */
function upTo(testCount: number, chunk: number): number {
  return Math.floor((testCount * chunk) / SIMULATION_CHUNKS);
}

function mixtureOf(kinds: readonly UnitKind[]): MixtureTable {
  if (kinds.length === 0 || kinds.length > 254) throw new StatsError('sample-size', { kinds: kinds.length });
  for (const { mean, sd, share } of kinds) {
    requireWithin({ mean });
    requireWithin({ sd }, { min: 0 });
    requireWithin({ share }, { above: 0, max: 1e100 });
  }
  const total = kinds.reduce((sum, { share }) => sum + share, 0);
  let sum = 0;
  const thresholds = Float64Array.from(kinds, ({ share }) => Math.round((WORDS * (sum += share)) / total));
  thresholds[kinds.length - 1] = WORDS;
  return {
    ...{ thresholds, leading: leadingParts(thresholds) },
    means: Float64Array.from(kinds, ({ mean }) => mean),
    sds: Float64Array.from(kinds, ({ sd }) => sd),
  };
}

/** A table of bytes: at most 254 parts. */
function leadingParts(thresholds: Float64Array): Uint8Array {
  const size = 1 << LEADING_BITS;
  return Uint8Array.from({ length: size }, (_, i) => {
    const first = thresholds.findIndex((threshold) => (WORDS / size) * i < threshold);
    const last = thresholds.findIndex((threshold) => (WORDS / size) * (i + 1) - 1 < threshold);
    return first === last ? first : UNSETTLED;
  });
}

import type { Stream } from '#random';
import { fillNormals, fillWords } from '#random';
import type { ReferenceZone } from './dosage-unit-rules.ts';
import { FACTOR_OF_10, FACTOR_OF_30 } from './dosage-unit-rules.ts';

/** Parts of a mixture: cumulative shares of 2^32, and mean and spread of each. */
export interface MixtureTable {
  readonly thresholds: Float64Array;
  /** Part of all words with the same leading bits; UNSETTLED where a threshold lies among them. */
  readonly leading: Uint8Array;
  readonly means: Float64Array;
  readonly sds: Float64Array;
}

/** Leading bits of a word that mostly settle the part, and the mark where they do not. */
export const LEADING_BITS = 12;
export const UNSETTLED = 255;

/** Limits of the test as the kernel needs them. */
export interface TestRules {
  readonly zone: ReferenceZone;
  /** L1, and 0.01 L2. */
  readonly acceptanceLimit: number;
  readonly unitShare: number;
}

/** Simulated tests, counted. */
export interface Tally {
  passCount: number;
  stage1Count: number;
}

/** A sample of 10 or 30 in a row never reaches over the end of the block: what is left is dropped. */
const BLOCK = 4096;
const block = new Float64Array(BLOCK);
const words = new Uint32Array(BLOCK);

/**
 * Simulates a number of two-stage tests, sample after sample.
 *
 * @param stream - moved on in place
 * @param mixture - where a unit comes from
 * @param job - rules, and the number of tests
 * @returns how many passed, and how many of them at stage 1
 * @throws nothing; the caller checks the input
 * @source Ph. Eur. 2.9.40, USP <905>, table 2
 */
export function simulateTests(
  stream: Stream,
  mixture: MixtureTable,
  job: { readonly rules: TestRules; readonly testCount: number },
): Tally {
  const isSingle = mixture.means.length === 1;
  const scaling = isSingle ? { shift: mixture.means[0]!, scale: mixture.sds[0]! } : { shift: 0, scale: 1 };
  const run: Run = { ...job.rules, ...scaling, left: job.testCount, passCount: 0, stage1Count: 0 };
  while (run.left > 0) {
    fillNormals(stream, block);
    if (!isSingle) fillMixture(stream, mixture);
    judgeBlock(run);
  }
  return { passCount: run.passCount, stage1Count: run.stage1Count };
}

/** Turns each normal number of the block into the content of a unit of a part drawn by its share. */
function fillMixture(stream: Stream, { thresholds, leading, means, sds }: MixtureTable): void {
  fillWords(stream, words);
  for (let i = 0; i < BLOCK; i++) {
    const word = words[i]!;
    let part = leading[word >>> (32 - LEADING_BITS)]!;
    if (part === UNSETTLED) {
      part = 0;
      while (word >= thresholds[part]!) part++;
    }
    block[i] = means[part]! + sds[part]! * block[i]!;
  }
}

interface Run extends TestRules, Tally {
  /** Content = shift + scale x number in the block. */
  readonly shift: number;
  readonly scale: number;
  left: number;
}

/** Tests from the block until it or the job is at its end. The loop holds no call. */
function judgeBlock(run: Run): void {
  const { shift, scale, acceptanceLimit, unitShare } = run;
  const { low, high } = run.zone;
  const x = block;
  const variance = scale * scale;
  const perVariance10 = (FACTOR_OF_10 * FACTOR_OF_10 * variance) / 9;
  const perVariance30 = (FACTOR_OF_30 * FACTOR_OF_30 * variance) / 29;
  const perScale = 1 / scale;
  let { left, passCount, stage1Count } = run;
  let at = 0;
  while (left > 0 && at <= BLOCK - 30) {
    left--;
    const a = x[at]!;
    const b = x[at + 1]!;
    const c = x[at + 2]!;
    const d = x[at + 3]!;
    const e = x[at + 4]!;
    const f = x[at + 5]!;
    const g = x[at + 6]!;
    const h = x[at + 7]!;
    const i = x[at + 8]!;
    const j = x[at + 9]!;
    let sum = a + b + (c + d) + (e + f + (g + h)) + (i + j);
    let squares = a * a + b * b + (c * c + d * d) + (e * e + f * f + (g * g + h * h)) + (i * i + j * j);
    let mean = shift + scale * sum * 0.1;
    let room = acceptanceLimit - Math.max(low - mean, mean - high, 0);
    if (room >= 0 && perVariance10 * (squares - sum * sum * 0.1) <= room * room) {
      stage1Count++;
      passCount++;
      at += 10;
      continue;
    }
    const end = at + 30;
    let oddSum = 0;
    let oddSquares = 0;
    for (let k = at + 10; k < end; k += 2) {
      const p = x[k]!;
      const q = x[k + 1]!;
      sum += p;
      squares += p * p;
      oddSum += q;
      oddSquares += q * q;
    }
    sum += oddSum;
    squares += oddSquares;
    mean = shift + (scale * sum) / 30;
    room = acceptanceLimit - Math.max(low - mean, mean - high, 0);
    if (room >= 0 && perVariance30 * (squares - (sum * sum) / 30) <= room * room) {
      const reference = Math.min(Math.max(mean, low), high);
      const lowest = ((1 - unitShare) * reference - shift) * perScale;
      const highest = ((1 + unitShare) * reference - shift) * perScale;
      let k = at;
      while (k < end && x[k]! >= lowest && x[k]! <= highest) k++;
      if (k === end) passCount++;
    }
    at = end;
  }
  run.left = left;
  run.stage1Count = stage1Count;
  run.passCount = passCount;
}

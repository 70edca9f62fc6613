import { exp, log } from '#elementary';
import { nextUniform } from './next-uniform.ts';
import type { Stream } from './stream.ts';
import { EDGES, HEIGHTS, LAYERS, POSITION_SCALE, TAIL_START } from './ziggurat-tables.ts';

const LAYER_MASK = LAYERS - 1;
const WORD_FRACTION = 1 / 4294967296;
/** Copies of this module's own: the engine then knows their addresses while it compiles the loop. */
const SCALE = POSITION_SCALE.slice();
/** Below this distance a point of the layer lies under the curve for sure. */
const SURE = EDGES.slice(1);
/** Numbers are made here and copied: the engine knows the place and the length of this block, not those of a target. */
const BLOCK = 1024;
const block = new Float64Array(BLOCK);

/**
 * Fills an array with independent standard normal numbers (ziggurat, two words a number: 9 bits choose the layer, 55 the
 * position). What a stream gives does not depend on how a series is cut into calls.
 *
 * @param stream - moved on in place
 * @param target - every element is overwritten
 * @returns nothing
 * @throws nothing
 * @source G. Marsaglia, W. W. Tsang (2000), J. Stat. Softw. 5(8), with 512 layers; tail: G. Marsaglia (1964), Technometrics 6
 * @validity exact up to the rounding of the position to 55 bits
 */
export function fillNormals(stream: Stream, target: Float64Array): void {
  for (let at = 0; at < target.length; at += BLOCK) {
    const count = Math.min(BLOCK, target.length - at);
    fillBlock(stream, count);
    target.set(count === BLOCK ? block : block.subarray(0, count), at);
  }
}

function fillBlock(stream: Stream, count: number): void {
  let k = 0;
  while (k < count) {
    k = fillSure(stream.state, k, count);
    if (k === count) return;
    const settled = settle(stream, block[k]!);
    if (!Number.isNaN(settled)) block[k++] = settled;
  }
}

/** The layer of the last draw of `fillSure`, for `settle`. */
let lastLayer = 0;

/**
 * Fills the block from index `from` up to `end` until a draw falls outside the sure part of its layer (1 in 120); that draw
 * is left at the returned index. The state lives in locals and the loop holds no call.
 */
function fillSure(state: Int32Array, from: number, end: number): number {
  let s0 = state[0]!;
  let s1 = state[1]!;
  let s2 = state[2]!;
  let s3 = state[3]!;
  let k = from;
  for (; k < end; k++) {
    let sum = (s0 + s3) | 0;
    let shifted = s1 << 9;
    const first = (((sum << 7) | (sum >>> 25)) + s0) | 0;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= shifted;
    s3 = (s3 << 11) | (s3 >>> 21);
    sum = (s0 + s3) | 0;
    shifted = s1 << 9;
    const second = (((sum << 7) | (sum >>> 25)) + s0) >>> 0;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= shifted;
    s3 = (s3 << 11) | (s3 >>> 21);
    const layer = first & LAYER_MASK;
    const x = ((first >> 9) + second * WORD_FRACTION) * SCALE[layer]!;
    block[k] = x;
    if (Math.abs(x) >= SURE[layer]!) {
      lastLayer = layer;
      break;
    }
  }
  state[0] = s0;
  state[1] = s1;
  state[2] = s2;
  state[3] = s3;
  return k;
}

/** A draw outside the sure part of its layer: from the tail, or kept with the chance the curve gives; NaN = draw anew. */
function settle(stream: Stream, x: number): number {
  const layer = lastLayer;
  if (layer === 0) {
    const beyond = tail(stream);
    return x < 0 ? -beyond : beyond;
  }
  const low = HEIGHTS[layer]!;
  const height = low + (HEIGHTS[layer + 1]! - low) * nextUniform(stream);
  return height < exp(-0.5 * x * x) ? x : NaN;
}

/** Marsaglia's exact method for the tail beyond TAIL_START. */
function tail(stream: Stream): number {
  for (;;) {
    const distance = -log(nextUniform(stream)) / TAIL_START;
    const bound = -log(nextUniform(stream));
    if (2 * bound >= distance * distance) return TAIL_START + distance;
  }
}

import { describe, expect, test } from 'vitest';
import { exp, log } from '#elementary';
import type { Stream } from '#random';
import { fillNormals, nextUniform, nextWord, seedStream } from '#random';
import { EDGES, HEIGHTS, LAYERS, TAIL_START } from './ziggurat-tables.ts';

/** The plain twin: one number at a time, as the paper says it. */
function plainNormal(stream: Stream): number {
  for (;;) {
    const first = nextWord(stream) | 0;
    const second = nextWord(stream);
    const layer = first & (LAYERS - 1);
    const x = ((first >> 9) + second / 4294967296) * (EDGES[layer]! / 4194304);
    if (Math.abs(x) < EDGES[layer + 1]!) return x;
    if (layer === 0) return x < 0 ? -plainTail(stream) : plainTail(stream);
    const height = HEIGHTS[layer]! + (HEIGHTS[layer + 1]! - HEIGHTS[layer]!) * nextUniform(stream);
    if (height < exp(-0.5 * x * x)) return x;
  }
}

function plainTail(stream: Stream): number {
  for (;;) {
    const distance = -log(nextUniform(stream)) / TAIL_START;
    if (-2 * log(nextUniform(stream)) >= distance * distance) return TAIL_START + distance;
  }
}

const N = 2_000_000;
const draws = new Float64Array(N);
fillNormals(seedStream({ seed: 20 }), draws);

describe('fillNormals', () => {
  test('property: same bits as the plain twin, 300000 numbers', () => {
    const stream = seedStream({ seed: 4, chunk: 2 });
    const twin = seedStream({ seed: 4, chunk: 2 });
    const block = new Float64Array(300000);
    fillNormals(stream, block);
    expect(block.every((x) => x === plainNormal(twin))).toBe(true);
    expect(stream.state).toEqual(twin.state);
  });

  test('property: how a series is cut into calls does not matter', () => {
    const whole = new Float64Array(5000);
    fillNormals(seedStream({ seed: 8 }), whole);
    const stream = seedStream({ seed: 8 });
    const parts = new Float64Array(5000);
    for (const [from, to] of [
      [0, 1],
      [1, 1],
      [1, 700],
      [700, 4999],
      [4999, 5000],
    ] as const) {
      fillNormals(stream, parts.subarray(from, to));
    }
    expect(parts).toEqual(whole);
  });

  test('property: first four moments and lag 1 within 4 standard errors', () => {
    let [m1, m2, m3, m4, lag, previous] = [0, 0, 0, 0, 0, 0];
    for (const x of draws) {
      m1 += x;
      m2 += x * x;
      m3 += x * x * x;
      m4 += x * x * x * x;
      lag += x * previous;
      previous = x;
    }
    // Variances of x, x^2, x^3, x^4 and of a product of two: 1, 2, 15, 96, 1 (moments of the normal law).
    const z = [m1 / N, (m2 / N - 1) / Math.sqrt(2), m3 / N / Math.sqrt(15), (m4 / N - 3) / Math.sqrt(96), lag / N];
    for (const error of z) expect(Math.abs(error) * Math.sqrt(N)).toBeLessThan(4);
  });

  test.each([
    // Abramowitz, Stegun, table 26.1: P(x) to 10 decimals; beyond 4: table 26.2 (-log Q), here as Q.
    [0.25, 2 * (1 - 0.5987063257)],
    [0.5, 2 * (1 - 0.6914624613)],
    [1, 2 * (1 - 0.8413447461)],
    [2, 2 * (1 - 0.9772498681)],
    [3, 2 * (1 - 0.998650102)],
    [3.8520461503683912, 1.1713e-4], // start of the tail: layer 0 begins here (mpmath, 5 digits)
    [4, 6.33425e-5],
    [5, 5.73303e-7],
  ])('golden: share beyond +-%s', (z, share) => {
    const count = draws.reduce((sum, x) => sum + (Math.abs(x) > z ? 1 : 0), 0);
    expect(Math.abs(count - N * share)).toBeLessThan(4 * Math.sqrt(N * share) + 1);
  });

  test('golden: 512 layers of equal area close at the peak', () => {
    // Marsaglia, Tsang 2000: the top layer ends at x = 0, where the curve is 1. The 511 steps amplify the rounding of the
    // start; 1e-11 is far below what any number of draws can show.
    const top = EDGES[LAYERS - 1]!;
    const area = EDGES[0]! * exp(-0.5 * TAIL_START * TAIL_START);
    expect(Math.abs(top * (1 - exp(-0.5 * top * top)) - area) / area).toBeLessThan(1e-11);
    // Area of the bottom layer: rectangle plus tail; the tail by erfc, mpmath at 30 digits.
    expect(area).toBeCloseTo(0.00245676635154135573, 16);
  });

  test('limit: an empty array draws nothing', () => {
    const stream = seedStream({ seed: 1 });
    fillNormals(stream, new Float64Array(0));
    expect(stream.state).toEqual(seedStream({ seed: 1 }).state);
  });
});

import { exp, log } from '#elementary';
import { normalCdf } from './normal-cdf.ts';
import type { Tail } from './tail.ts';

const STEP = 0.25;
const FROM = -8.5;
const TO = 38;
const ONE_BY_ROOT_TWO_PI = 0.3989422804014327;

/**
 * Tails of the range of several standard normal values.
 *
 * P(range <= w) = k int phi(z) (Phi(z) - Phi(z - w))^(k-1) dz, z the greatest of them; P(range > w) the same with
 * Phi(z)^(k-1) - (Phi(z) - Phi(z - w))^(k-1), which loses no digits. Trapezoidal rule, exact to rounding for such functions.
 *
 * @param groupCount - k, whole, from 2 to 1000; the caller checks it
 * @returns function of the width w, from 0, and the tail
 * @throws nothing
 * @source H. O. Hartley (1942), Biometrika 32, 309-348
 * @validity absolute error below 1e-13; relative error of the upper tail below 1e-11 down to 1e-100
 */
export function rangeTail(groupCount: number): (width: number, tail: Tail) => number {
  const count = Math.round((TO - FROM) / STEP);
  const z = Float64Array.from({ length: count }, (_, i) => FROM + i * STEP);
  const cdf = z.map(normalCdf);
  const power = groupCount - 1;
  const weight = z.map((x, i) => {
    const density = exp(-0.5 * x * x) * ONE_BY_ROOT_TWO_PI * STEP * groupCount;
    return density * exp(power * log(cdf[i]!));
  });
  return (width, tail) => {
    const last = Math.min(count, Math.ceil((Math.max(9, 0.5 * width + 9) - FROM) / STEP));
    let sum = 0;
    for (let i = 0; i < last; i++) {
      const share = normalCdf(z[i]! - width) / cdf[i]!;
      const hit = atLeastOne(share, power);
      sum += weight[i]! * (tail === 'lower' ? 1 - hit : hit);
    }
    return Math.min(1, sum);
  };
}

/** 1 - (1 - p)^count without cancellation: by doubling, bit by bit from the highest. */
function atLeastOne(p: number, count: number): number {
  let hit = 0;
  for (let bit = 1 << (31 - Math.clz32(count)); bit > 0; bit >>= 1) {
    hit *= 2 - hit;
    if ((count & bit) !== 0) hit += p - hit * p;
  }
  return hit;
}

import { exp } from '@fillwright/stats/elementary';
import { frictionExponent_ratio, type WallFriction } from './friction-exponent.ts';

/**
 * Mean stress along a plug as a share of the stress at its top.
 *
 * sigma_mean / sigma_top = (1 - e^-k) / k, k = 4 mu K L / D
 *
 * @param column - wallFriction_ratio mu, lateralStress_ratio K, length_mm, diameter_mm of the plug
 * @returns share, 1 without friction
 * @throws DomainError "not-a-number", "not-positive", "out-of-range"
 * @source integral of the profile of Shaxby & Evans, Trans. Faraday Soc. 19 (1923) 60 (from memory)
 * @validity as `transmittedStress_frac`
 * @example meanStress_frac({ wallFriction_ratio: 0.25, lateralStress_ratio: 0.5, length_mm: 12, diameter_mm: 6 }) // 0.6321205588285577
 */
export function meanStress_frac(column: WallFriction): number {
  const k = frictionExponent_ratio(column);
  // 1 - e^-k cancels for small k; the series is exact to 1e-16 there.
  return k < 1e-3 ? 1 - (k / 2) * (1 - (k / 3) * (1 - (k / 4) * (1 - k / 5))) : (1 - exp(-k)) / k;
}

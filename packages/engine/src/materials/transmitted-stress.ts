import { exp } from '@fillwright/stats/elementary';
import { frictionExponent_ratio, type WallFriction } from './friction-exponent.ts';

/**
 * Share of the ram's stress that reaches the far end of a plug.
 *
 * sigma_low / sigma_top = exp(-4 mu K L / D)
 *
 * @param column - wallFriction_ratio mu, lateralStress_ratio K, length_mm, diameter_mm of the plug
 * @returns share, 1 without friction, towards 0 for long plugs
 * @throws DomainError "not-a-number", "not-positive", "out-of-range"
 * @source Shaxby & Evans, Trans. Faraday Soc. 19 (1923) 60 (from memory)
 * @validity mu .2-.5 unlubricated, .1-.2 lubricated, K .35-.5 (from memory); constant along the plug. It draws the
 *   profile only: a compression law fitted in a die of this bore has wall friction inside already
 * @example transmittedStress_frac({ wallFriction_ratio: 0.25, lateralStress_ratio: 0.5, length_mm: 12, diameter_mm: 6 }) // 0.36787944117144233
 */
export function transmittedStress_frac(column: WallFriction): number {
  return exp(-frictionExponent_ratio(column));
}

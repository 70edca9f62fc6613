import { DomainError, requireWithin } from '#catalogue';
import { DEFAULT_GRAVITY_m_per_s2 } from './default-gravity.ts';

/**
 * Mass flow of coarse, free-flowing particles through a round orifice.
 *
 * W = 0.58 rho_b sqrt(g) (D_0 - 1.4 d)^2.5
 *
 * @param input - density_kg_per_m3: bulk, > 0; orificeDiameter_m: D_0; particleDiameter_m: d, D_0 > 1.4 d;
 *   gravity_m_per_s2: left out 9.81
 * @returns g/s
 * @throws DomainError "not-a-number", "not-positive", "out-of-range" (orifice not above 1.4 particle diameters)
 * @source Beverloo, Leniger & van de Velde, Chem. Eng. Sci. 15 (1961) 260 (from memory); .58 and 1.4 for near-spheres
 * @validity free-flowing, d above about .4 mm, D_0 above about 6 d; powder finer than .3 mm flows far slower, held back
 *   by the air it must take in
 * @example orificeFlow_g_per_s({ density_kg_per_m3: 1000, orificeDiameter_m: 0.0114, particleDiameter_m: 0.001, gravity_m_per_s2: 4 }) // 11.6
 */
export function orificeFlow_g_per_s(input: {
  readonly density_kg_per_m3: number;
  readonly orificeDiameter_m: number;
  readonly particleDiameter_m: number;
  readonly gravity_m_per_s2?: number;
}): number {
  const { density_kg_per_m3, orificeDiameter_m, particleDiameter_m } = input;
  const gravity_m_per_s2 = input.gravity_m_per_s2 ?? DEFAULT_GRAVITY_m_per_s2;
  requireWithin({ density_kg_per_m3, orificeDiameter_m, particleDiameter_m, gravity_m_per_s2 }, { above: 0 });
  const open_m = orificeDiameter_m - 1.4 * particleDiameter_m;
  if (open_m <= 0) throw new DomainError('out-of-range', { orificeDiameter_m, above: 1.4 * particleDiameter_m });
  return 1000 * 0.58 * density_kg_per_m3 * Math.sqrt(gravity_m_per_s2) * open_m * open_m * Math.sqrt(open_m);
}

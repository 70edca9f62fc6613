import { DomainError, requireWithin } from '#catalogue';

/**
 * Water that a shell gives off between two states of drying.
 *
 * m_w = m (1 - w1) (w1/(1 - w1) - w2/(1 - w2)), w = loss on drying / wet mass
 *
 * @param input - shellMass_mg: with its water, > 0; waterBefore_frac and waterAfter_frac: 0 to below 1 of the wet mass
 * @returns mg; below 0 the shell took water up
 * @throws DomainError "not-a-number", "not-positive", "out-of-range"
 * @source mass balance of the dry shell
 * @validity loss on drying is on the wet basis; isotherms are on the dry basis and must not be entered here (16 % wet is
 *   19.05 % dry)
 * @example waterTransferred_mg({ shellMass_mg: 100, waterBefore_frac: 0.25, waterAfter_frac: 0 }) // 25
 */
export function waterTransferred_mg(input: {
  readonly shellMass_mg: number;
  readonly waterBefore_frac: number;
  readonly waterAfter_frac: number;
}): number {
  const { shellMass_mg, waterBefore_frac, waterAfter_frac } = input;
  requireWithin({ shellMass_mg }, { above: 0 });
  for (const [name, value] of Object.entries({ waterBefore_frac, waterAfter_frac })) {
    if (!Number.isFinite(value)) throw new DomainError('not-a-number', { [name]: value, min: 0, below: 1 });
    if (value < 0 || value >= 1) throw new DomainError('out-of-range', { [name]: value, min: 0, below: 1 });
  }
  return (shellMass_mg * (waterBefore_frac - waterAfter_frac)) / (1 - waterAfter_frac);
}

import { DomainError, requireWithin } from '#catalogue';

/**
 * Length over which cap and body of a locked shell cover each other.
 *
 * overlap = body + cap - closed
 *
 * @param shell - bodyLength_mm, capLength_mm, closedLength_mm locked; all > 0
 * @returns mm, > 0
 * @throws DomainError "not-a-number", "not-positive", "out-of-range" (closed length not below body + cap)
 * @source geometry
 * @validity the ends are counted with both lengths; locked < pre-lock < body + cap, or the chart has a typing error
 * @example overlap_mm({ bodyLength_mm: 18.5, capLength_mm: 10.75, closedLength_mm: 21.75 }) // 7.5
 */
export function overlap_mm(shell: {
  readonly bodyLength_mm: number;
  readonly capLength_mm: number;
  readonly closedLength_mm: number;
}): number {
  requireWithin({ ...shell }, { above: 0 });
  const { bodyLength_mm, capLength_mm, closedLength_mm } = shell;
  const overlap = bodyLength_mm + capLength_mm - closedLength_mm;
  if (overlap <= 0) throw new DomainError('out-of-range', { closedLength_mm, below: bodyLength_mm + capLength_mm });
  return overlap;
}

import type { NumberKey } from './number-reference.ts';

interface Edges {
  readonly low_mg: number;
  readonly high_mg: number;
  readonly meanLow_mg: number;
  readonly meanHigh_mg: number;
}

/**
 * What an edge between two decisions on the first weights opens: an end of the forecast or a limit of the mean.
 *
 * @param edges - forecast and limits of the mean, net
 * @param edge - net mass of the edge, whether it is shown net or gross, and whether there is a card: without one, for want
 *   of a tare, the limits have no entry
 * @returns name of the number; undefined where it has none
 */
export function numberOfEdge(
  edges: Edges,
  edge: { readonly edge_mg: number; readonly kind: 'net' | 'gross'; readonly hasCard: boolean },
): NumberKey | undefined {
  const { edge_mg, kind, hasCard } = edge;
  if (edge_mg === edges.low_mg) return `first-${kind}-low`;
  if (edge_mg === edges.high_mg) return `first-${kind}-high`;
  const limit = kind === 'net' ? 'limit' : 'gross';
  if (edge_mg === edges.meanLow_mg) return hasCard ? `${limit}-mean-low` : undefined;
  return edge_mg === edges.meanHigh_mg && hasCard ? `${limit}-mean-high` : undefined;
}

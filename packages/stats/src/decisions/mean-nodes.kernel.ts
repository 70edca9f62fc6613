import type { QuadratureRule } from '#distributions';
import { gaussLegendre } from '#distributions';
import type { ReferenceZone } from './dosage-unit-rules.ts';
import { LARGEST_ACCEPTANCE_VALUE } from './dosage-unit-rules.ts';
import { normalDensity } from './normal-density.kernel.ts';

const MOST_NODES = 28;
const MOST_PANELS = 12;
const CAPACITY = 3 * MOST_PANELS * MOST_NODES;
const RULES: (QuadratureRule | undefined)[] = [];

/** Points for a mean x and their weights, density included; the first `count` are in use. */
export interface MeanNodes {
  readonly x: Float64Array;
  readonly weight: Float64Array;
  count: number;
}

/**
 * Room for the nodes of one law.
 *
 * @returns nodes, none in use
 * @throws nothing
 * @source none needed
 */
export const emptyNodes = (): MeanNodes => ({
  x: new Float64Array(CAPACITY),
  weight: new Float64Array(CAPACITY),
  count: 0,
});

/** Normal law of a mean; `reach` in standard deviations to each side, `fineness` in nodes per `grain`. */
export interface MeanLaw {
  readonly mean: number;
  readonly sd: number;
  readonly reach: number;
  readonly fineness: number;
  /** Length over which the rest of the integrand changes; at most sd. */
  readonly grain: number;
}

/**
 * Places Gauss-Legendre nodes for an average over a mean, cut where the integrand has a kink: at both edges of the
 * reference zone, and where the mean alone uses up the acceptance value (beyond it nothing passes).
 *
 * @param nodes - overwritten
 * @param law - of the mean, sd above 0
 * @param zone - reference zone
 * @returns nothing
 * @throws nothing
 * @source Gauss-Legendre quadrature on pieces
 */
export function placeMeanNodes(nodes: MeanNodes, law: MeanLaw, zone: ReferenceZone): void {
  const from = Math.max(law.mean - law.reach * law.sd, zone.low - LARGEST_ACCEPTANCE_VALUE);
  const to = Math.min(law.mean + law.reach * law.sd, zone.high + LARGEST_ACCEPTANCE_VALUE);
  nodes.count = 0;
  addPiece(nodes, law, { from, to: Math.min(to, zone.low) });
  addPiece(nodes, law, { from: Math.max(from, zone.low), to: Math.min(to, zone.high) });
  addPiece(nodes, law, { from: Math.max(from, zone.high), to });
}

function addPiece(nodes: MeanNodes, law: MeanLaw, piece: { readonly from: number; readonly to: number }): void {
  const length = piece.to - piece.from;
  if (!(length > 0)) return;
  const wanted = Math.floor(4.5 + (law.fineness * length) / law.grain);
  if (wanted <= MOST_NODES) {
    addPanel(nodes, law, { from: piece.from, half: 0.5 * length, count: wanted });
    return;
  }
  const panels = Math.min(Math.ceil(wanted / MOST_NODES), MOST_PANELS);
  const half = (0.5 * length) / panels;
  for (let i = 0; i < panels; i++) addPanel(nodes, law, { from: piece.from + 2 * i * half, half, count: MOST_NODES });
}

interface Panel {
  readonly from: number;
  readonly half: number;
  readonly count: number;
}

function addPanel(nodes: MeanNodes, law: MeanLaw, { from, half, count }: Panel): void {
  const rule = (RULES[count] ??= gaussLegendre(count));
  const scale = half / law.sd;
  let at = nodes.count;
  for (let i = 0; i < count; i++) {
    const x = from + half * (1 + rule.nodes[i]!);
    nodes.x[at] = x;
    nodes.weight[at++] = scale * rule.weights[i]! * normalDensity((x - law.mean) / law.sd);
  }
  nodes.count = at;
}

import { gaussLegendre } from '#distributions';
import { exp, requireWithin } from '#elementary';
import { MATRIX, SOLUTION, solveRunLengths } from './run-length-equations.kernel.ts';

export interface IndividualsChart {
  /** Limits of single values and of the moving range, in the standard deviation for which they were made. */
  readonly individualLimit: number;
  readonly movingRangeLimit: number;
  /** In the same unit. */
  readonly shift: number;
  /** True standard deviation divided by the one for which the limits were made. */
  readonly sigmaRatio: number;
}

const PER_PIECE = 14;
const RULE = gaussLegendre(PER_PIECE);
const ONE_BY_ROOT_TWO_PI = 0.3989422804014327;

/**
 * Mean run length of single values and moving ranges judged together.
 *
 * l(x) = 1 + int phi(y) l(y) dy over -L..L and x - D..x + D: what is still to come after a value x. l is smooth between the
 * points where one of the bounds changes over or meets such a point; each piece has its own Gauss nodes, and a part of a
 * piece is integrated through the polynomial on them. The first value has no moving range.
 *
 * @param input - individualLimit 0.5 to 6, movingRangeLimit 1 to 20, both divided by sigmaRatio; sigmaRatio 0.2 to 5; shift -10 to 10
 * @returns mean number of values up to the first signal of either chart
 * @throws StatsError "not-finite", "out-of-range"
 * @source S. V. Crowder, J. Qual. Technol. 19 (1987) 98-102 (from memory): the integral equation
 * @validity normal independent values, centre and sigma known; relative error below 1e-6
 */
export function individualsRunLength(input: IndividualsChart): number {
  const { individualLimit, movingRangeLimit, shift, sigmaRatio } = input;
  requireWithin({ sigmaRatio }, { min: 0.2, max: 5 });
  requireWithin({ individualLimit }, { min: 0.5 * sigmaRatio, max: 6 * sigmaRatio });
  requireWithin(
    { movingRangeLimit },
    { min: Math.max(1, individualLimit / sigmaRatio / 3) * sigmaRatio, max: 20 * sigmaRatio },
  );
  requireWithin({ shift }, { min: -10, max: 10 });
  const limit = individualLimit / sigmaRatio;
  const reach = movingRangeLimit / sigmaRatio;
  const centre = shift / sigmaRatio;
  const edges = piecesOf({ limit, reach });
  const pieceCount = edges.length - 1;
  const n = pieceCount * PER_PIECE;
  for (let i = 0; i < n; i++) {
    const x = nodeOf(edges, i);
    SOLUTION[i] = 1;
    const [from, to] = [Math.max(-limit, x - reach), Math.min(limit, x + reach)];
    for (let piece = 0; piece < pieceCount; piece++)
      placePart({
        row: i * n,
        edges,
        piece,
        from: Math.max(from, edges[piece]!),
        to: Math.min(to, edges[piece + 1]!),
        centre,
      });
    MATRIX[i * n + i] = 1 + MATRIX[i * n + i]!;
  }
  solveRunLengths(n);
  let mean = 1;
  for (let j = 0; j < n; j++) {
    const half = 0.5 * (edges[Math.floor(j / PER_PIECE) + 1]! - edges[Math.floor(j / PER_PIECE)]!);
    mean += half * RULE.weights[j % PER_PIECE]! * density(nodeOf(edges, j) - centre) * SOLUTION[j]!;
  }
  return mean;
}

/** -L, the points where l is not smooth, L. */
function piecesOf({ limit, reach }: { limit: number; reach: number }): number[] {
  const edges = [-limit, limit];
  for (let kink = limit - reach; kink > -limit; kink -= reach) edges.push(kink, -kink);
  edges.sort((a, b) => a - b);
  return edges.filter((edge, i) => i === 0 || edge - edges[i - 1]! > 1e-9);
}

function nodeOf(edges: readonly number[], index: number): number {
  const piece = Math.floor(index / PER_PIECE);
  const [low, high] = [edges[piece]!, edges[piece + 1]!];
  return 0.5 * (low + high) + 0.5 * (high - low) * RULE.nodes[index % PER_PIECE]!;
}

interface Part {
  readonly row: number;
  readonly edges: readonly number[];
  readonly piece: number;
  readonly from: number;
  readonly to: number;
  readonly centre: number;
}

/** Minus the weights of the nodes of one piece in the integral from..to. */
function placePart({ row, edges, piece, from, to, centre }: Part): void {
  const at = row + piece * PER_PIECE;
  for (let j = 0; j < PER_PIECE; j++) MATRIX[at + j] = 0;
  if (to <= from) return;
  const [low, high] = [edges[piece]!, edges[piece + 1]!];
  const half = 0.5 * (to - from);
  for (let k = 0; k < PER_PIECE; k++) {
    const y = from + half * (1 + RULE.nodes[k]!);
    const weight = half * RULE.weights[k]! * density(y - centre);
    if (to - from > (high - low) * (1 - 1e-12)) MATRIX[at + k] = -weight;
    else addInterpolated({ at, weight, position: (2 * (y - low)) / (high - low) - 1 });
  }
}

/** Spreads a weight over the nodes by Lagrange's formula. */
function addInterpolated({ at, weight, position }: { at: number; weight: number; position: number }): void {
  for (let j = 0; j < PER_PIECE; j++) {
    let factor = weight;
    for (let i = 0; i < PER_PIECE; i++)
      if (i !== j) factor *= (position - RULE.nodes[i]!) / (RULE.nodes[j]! - RULE.nodes[i]!);
    MATRIX[at + j] = MATRIX[at + j]! - factor;
  }
}

function density(z: number): number {
  return ONE_BY_ROOT_TWO_PI * exp(-0.5 * z * z);
}

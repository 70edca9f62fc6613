import { exp, log } from '#elementary';

/** Number of layers; 9 random bits choose one. */
export const LAYERS = 512;

/**
 * Start of the tail and area of one layer for 512 layers: the solution of "the layers close at the peak of exp(-x^2/2)".
 * Solved with mpmath at 40 digits: 3.85204615036839124811..., 0.00245676635154135573...
 */
export const TAIL_START = 3.8520461503683912;
const LAYER_AREA = 0.0024567663515413557;

const density = (x: number): number => exp(-0.5 * x * x);

/** Right edge of layer i, falling to 0; the bottom layer is as wide as its area asks for, tail included. */
export const EDGES = layerEdges();
/** Height of the curve above each edge. */
export const HEIGHTS = EDGES.map(density);
/** Turns a signed 23-bit position into a distance inside the layer. */
export const POSITION_SCALE = EDGES.map((edge) => edge / 4194304);

function layerEdges(): Float64Array {
  const edges = new Float64Array(LAYERS + 1);
  edges[0] = LAYER_AREA / density(TAIL_START);
  edges[1] = TAIL_START;
  for (let i = 2; i < LAYERS; i++) {
    const below = edges[i - 1]!;
    edges[i] = Math.sqrt(-2 * log(LAYER_AREA / below + density(below)));
  }
  return edges;
}

export type { MassUnit, WeightBasis, WeightsLine, WeightsRead, WeightsText } from './weights-read.ts';
export { readWeights } from './read-weights.ts';

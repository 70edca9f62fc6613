export {
  STRUCK_REASONS,
  WEIGHTS_FAULTS,
  type MassUnit,
  type StruckReason,
  type WeightBasis,
  type WeightsFault,
  type WeightsLine,
  type WeightsRead,
  type WeightsText,
} from './weights-read.ts';
export { readWeights } from './read-weights.ts';

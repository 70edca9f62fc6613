export { cardOfShells } from './card-of-shells.ts';
export { entries } from './entries.ts';
export { knownOfBrief, type BriefAndPurpose } from './known-of-brief.ts';
export { knownOfSetUp } from './known-of-set-up.ts';
export { STRUCK_REASONS, WEIGHTS_FAULTS, type StruckReason, type WeightsFault } from './weights-text.ts';
export { weightsJudged } from './weights-judged.ts';
export type {
  PossibleCause,
  Purpose,
  StepOfPin,
  WeighedCapsule,
  WeighedPlace,
  WeighedSubstance,
  WeightsInput,
  WeightTest,
  WheelOfRevolution,
} from './weights-input.ts';
export type {
  AssuranceOfPassing,
  CapabilityOfWeights,
  CauseLeft,
  Conclusion,
  Estimate_mg,
  Estimate_pct,
  Histogram,
  LimitReason,
  LimitVerdict,
  MassSummary,
  NamedCapsule,
  NetFromGross,
  NoteCode,
  PlaceMean,
  Revolution,
  TestReason,
  TestVerdict,
  Verdict,
  WeightsJudgement,
  WeightsNote,
} from './weights-judgement.ts';

export type { AcceptanceContour, ContourInput } from './acceptance-contour.ts';
export { acceptanceContour } from './acceptance-contour.ts';
export type { LimitPlan } from './acceptance-limits.ts';
export { acceptanceLimits } from './acceptance-limits.ts';
export type { AcceptanceValue, AcceptanceValueInput } from './acceptance-value.ts';
export { acceptanceValue } from './acceptance-value.ts';
export type { StageArithmetic, UnitContents, UnitOutside } from './acceptance-value-of-units.ts';
export { acceptanceValueOfUnits } from './acceptance-value-of-units.ts';
export type { UncertainDosageUnits } from './acceptance-value-quantiles.ts';
export { acceptanceValueQuantiles } from './acceptance-value-quantiles.ts';
export type { LargeSampleCounts } from './large-sample-counts.ts';
export { largeSampleCounts } from './large-sample-counts.ts';
export type { AssuredSample, Assurance } from './assurance-of-sample.ts';
export { assuranceOfSample } from './assurance-of-sample.ts';
export type { AssuranceOfPlaces, ContentsOfPlaces } from './assurance-of-places.ts';
export { assuranceOfPlaces } from './assurance-of-places.ts';
export type { Conduct, ConductReason, DossierTest, Judgement, NextStep } from './conduct.ts';
export type { WeighedCapsules } from './contents-by-mass.ts';
export { contentsByMass } from './contents-by-mass.ts';
export type { DoseInContents } from './dosage-unit-method.ts';
export { dosageUnitMethod } from './dosage-unit-method.ts';
export type { DosageUnitLimits } from './dosage-unit-rules.ts';
export { DOSAGE_UNIT_LIMITS } from './dosage-unit-rules.ts';
export type { MassLimits } from './mass-limits.ts';
export { MASS_LIMITS } from './mass-limits.ts';
export type { BatchGrid } from './operating-characteristic.ts';
export { operatingCharacteristic } from './operating-characteristic.ts';
export type { KnownBatch, PassingBound } from './passing-bound.ts';
export { passingBound } from './passing-bound.ts';
export type { AcceptanceValueLimit } from './probability-acceptance-value-within.ts';
export { probabilityAcceptanceValueWithin } from './probability-acceptance-value-within.ts';
export type { DosageUnits } from './probability-of-passing-dosage-units.ts';
export { probabilityOfPassingDosageUnits } from './probability-of-passing-dosage-units.ts';
export type { UnitMasses } from './probability-of-passing-uniformity-of-mass.ts';
export { probabilityOfPassingUniformityOfMass } from './probability-of-passing-uniformity-of-mass.ts';
export type { SimulatedPass, SimulationInput, UnitKind } from './simulate-dosage-units.ts';
export { SIMULATION_CHUNKS, simulateDosageUnits } from './simulate-dosage-units.ts';
export type {
  ContentJudgement,
  ContentNumbers,
  ContentReason,
  ContentSample,
  ContentStage,
} from './uniformity-of-content.ts';
export { uniformityOfContent } from './uniformity-of-content.ts';
export type {
  DosageUnitJudgement,
  DosageUnitNumbers,
  DosageUnitReason,
  DosageUnitRules,
  DosageUnitSample,
} from './uniformity-of-dosage-units.ts';
export { uniformityOfDosageUnits } from './uniformity-of-dosage-units.ts';
export type { DosageUnitMasses } from './uniformity-of-dosage-units-by-mass.ts';
export { uniformityOfDosageUnitsByMass } from './uniformity-of-dosage-units-by-mass.ts';
export type { ContentsOfTwenty, MassJudgement, MassNumbers, MassReason } from './uniformity-of-mass.ts';
export { uniformityOfMass } from './uniformity-of-mass.ts';
export type {
  NetStep,
  SupplementJudgement,
  SupplementMasses,
  SupplementNumbers,
  SupplementReason,
} from './uniformity-of-supplement-mass.ts';
export { uniformityOfSupplementMass } from './uniformity-of-supplement-mass.ts';

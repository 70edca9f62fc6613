export type {
  Adjuster,
  DosingContext,
  DosingMethod,
  Parameter,
  ParameterValues,
  Prediction,
  Settings,
  SheetLine,
  Solution,
  Spread,
  SpreadComponent,
  StationTrace,
  Suitability,
} from './dosing.ts';
export type { Finding, FindingCode } from './finding.ts';
export { DOSING_METHODS } from './dosing-methods.ts';
export { entries } from './entries.ts';
export { gains, type Gains, type PartGain, type SettingGain } from './gains.ts';
export { intervalOfMean, type MeanInterval } from './interval-of-mean.ts';
export { parameterDraws } from './parameter-draws.ts';
export { valuesAtMeans } from './parameter-values.ts';

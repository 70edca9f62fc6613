export type {
  Adjuster,
  DosingContext,
  DosingMethod,
  Finding,
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
export { DOSING_METHODS } from './dosing-methods.ts';
export { entries } from './entries.ts';
export { gains, type Gains, type PartGain, type SettingGain } from './gains.ts';
export { intervalOfMean, type MeanInterval } from './interval-of-mean.ts';
export { valuesAtMeans } from './parameter-values.ts';

export { convertedValue } from './converted-value.ts';
export { entries } from './entries.ts';
export type { Calibrated, Guess, Measured, Population, Quantity } from './quantity.ts';
export { REPEATABILITY, singleMeasurement, type MeasuredKind } from './repeatability.ts';
export { standardUncertainty } from './standard-uncertainty.ts';
export { kilogramForce_N, STANDARD_GRAVITY_m_per_s2 } from './units.ts';

import type { FlagField, NumberField } from '#catalogue';

/** Fields that the entries of the measuring disc share. */
export const FEED = {
  key: 'feedDensity_g_per_mL',
  title: 'feed density in the bed',
  kind: 'number',
  unit: 'g/mL',
  above: 0,
  max: 5,
} as const satisfies NumberField;
export const BORE = {
  key: 'boreDiameter_mm',
  title: 'bore diameter',
  kind: 'number',
  unit: 'mm',
  above: 0,
  max: 30,
} as const satisfies NumberField;
export const HEIGHT = {
  key: 'discHeight_mm',
  title: 'disc height',
  kind: 'number',
  unit: 'mm',
  above: 0,
  max: 60,
} as const satisfies NumberField;
export const REFILL = {
  key: 'refill_ratio',
  title: 'refill factor',
  kind: 'number',
  unit: '1',
  min: 0,
  max: 3,
} as const satisfies NumberField;
export const PRELOAD = {
  key: 'preload_N',
  title: 'spring preload',
  kind: 'number',
  unit: 'N',
  min: 0,
  max: 2000,
} as const satisfies NumberField;
export const RATE = {
  key: 'rate_N_per_mm',
  title: 'spring rate',
  kind: 'number',
  unit: 'N/mm',
  min: 0,
  max: 1000,
} as const satisfies NumberField;
export const STATIONS = { min: 1, max: 12 } as const;
export const DEPTHS = {
  key: 'depths_mm',
  title: 'pin depth at the stop, below the disc top',
  kind: 'number',
  unit: 'mm',
  min: 0,
  max: 60,
  list: STATIONS,
} as const satisfies NumberField;
export const MASSES = { min: 1, max: 13 } as const;

export const GEOMETRY = {
  text: 'geometric stepwise-fill model of tamping discs; no published worked example found',
  read: 'geometry',
} as const;
export const FROM_BELOW =
  'Pins store penetration below the disc top face: scale signs differ between machines and texts.';

export const A = {
  key: 'a_frac',
  title: 'Kawakita a: greatest volume reduction',
  kind: 'number',
  unit: '1',
  above: 0,
  below: 1,
} as const satisfies NumberField;
export const B = {
  key: 'b_per_MPa',
  title: 'Kawakita b',
  kind: 'number',
  unit: '1/MPa',
  above: 0,
} as const satisfies NumberField;
export const INITIAL = {
  key: 'initialDensity_g_per_mL',
  title: 'packing from which a and b were fitted',
  kind: 'number',
  unit: 'g/mL',
  above: 0,
  max: 5,
} as const satisfies NumberField;
export const CAPTURED = {
  key: 'captured_mg',
  title: 'powder dragged in per tamp',
  kind: 'number',
  unit: 'mg',
  min: 0,
  optional: true,
} as const satisfies NumberField;
export const REFILLED = {
  key: 'isRefilledAfterLastPin',
  title: 'powder between the last pin and the scraper',
  kind: 'flag',
  optional: true,
} as const satisfies FlagField;

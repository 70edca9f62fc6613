import type { Field, NumberField, Source } from '#catalogue';
import { FLOW_GRADES } from './flow-scale.table.ts';

/** Fields and sources that several entries of this room share. Ranges hold what a powder can be, wide on purpose. */

export const BULK_AND_TAPPED = [
  { key: 'bulkDensity_g_per_mL', title: 'poured density', kind: 'number', unit: 'g/mL', above: 0, max: 10 },
  { key: 'tappedDensity_g_per_mL', title: 'tapped density', kind: 'number', unit: 'g/mL', above: 0, max: 10 },
] as const satisfies readonly NumberField[];
export const INDEX = {
  key: 'compressibilityIndex_pct',
  title: 'compressibility index',
  kind: 'number',
  unit: '%',
  min: 0,
  below: 100,
} as const satisfies NumberField;
export const FLOW_GRADE = {
  key: 'grade',
  title: 'grade of flow',
  kind: 'choice',
  choices: FLOW_GRADES,
} as const satisfies Field;
export const INITIAL_DENSITY = {
  key: 'initialDensity_g_per_mL',
  title: 'density at the start of the curve',
  kind: 'number',
  unit: 'g/mL',
  above: 0,
  max: 10,
} as const satisfies NumberField;
export const REDUCTION_LIMIT = {
  key: 'a_frac',
  title: 'greatest volume reduction, a',
  kind: 'number',
  unit: '1',
  above: 0,
  below: 1,
} as const satisfies NumberField;
export const PRESSURE = {
  key: 'pressure_MPa',
  title: 'pressure, ram force over bore area',
  kind: 'number',
  unit: 'MPa',
  min: 0,
  max: 2000,
} as const satisfies NumberField;
export const WALL_FRICTION = {
  key: 'wallFriction_ratio',
  title: 'wall friction coefficient',
  kind: 'number',
  unit: '1',
  min: 0,
  max: 2,
} as const satisfies NumberField;
export const LATERAL_STRESS = {
  key: 'lateralStress_ratio',
  title: 'lateral over axial stress',
  kind: 'number',
  unit: '1',
  min: 0,
  max: 1,
} as const satisfies NumberField;
export const GRAVITY = {
  key: 'gravity_m_per_s2',
  title: 'gravity, 9.81 where left out',
  kind: 'number',
  unit: 'm/s2',
  above: 0,
  max: 30,
  optional: true,
} as const satisfies NumberField;

export const USP_1174 = {
  text: 'USP <1174> Powder Flow, USP 29-NF 24 text: scale of flowability and table of the angle of repose',
  read: 'seen',
} as const satisfies Source;
export const GAPS = {
  text: 'closing of the gaps between the printed bands: upper end counted in; our choice',
  read: 'common practice, no source',
} as const satisfies Source;
export const KAWAKITA = {
  text: 'Kawakita & Luedde, Powder Technology 4 (1971) 61',
  read: 'from memory',
} as const satisfies Source;
export const INITIAL_PACKING = {
  text: 'Sheikh-Salem, study of lactose and sodium chloride: Kawakita constants depend on the initial packing (abstract)',
  read: 'secondary',
} as const satisfies Source;
export const SHAXBY_EVANS = {
  text: 'Shaxby & Evans, Trans. Faraday Soc. 19 (1923) 60',
  read: 'from memory',
} as const satisfies Source;
export const JANSSEN = { text: 'Janssen, Z. VDI 39 (1895) 1045', read: 'from memory' } as const satisfies Source;
export const GRAVITY_SOURCE = {
  text: 'gravity where none is given: 9.81 m/s2, standard gravity rounded (3rd CGPM 1901)',
  read: 'from memory',
} as const satisfies Source;
export const JENIKE = {
  text: 'Jenike 1964, extended by Schulze, Powders and Bulk Solids (2008)',
  read: 'from memory',
} as const satisfies Source;

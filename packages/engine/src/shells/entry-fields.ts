import type { Field, NumberField, Source } from '#catalogue';
import { SHELL_MATERIALS } from './water-limits.table.ts';

/** Fields and sources that several entries of this room share. Ranges hold any two-piece shell, wide on purpose. */

export const BODY_LENGTH = {
  key: 'bodyLength_mm',
  title: 'length of the body over its end',
  kind: 'number',
  unit: 'mm',
  above: 0,
  max: 100,
} as const satisfies NumberField;
export const BODY_DIAMETER = {
  key: 'bodyOuterDiameter_mm',
  title: 'outer diameter of the body',
  kind: 'number',
  unit: 'mm',
  above: 0,
  max: 50,
} as const satisfies NumberField;
export const BODY_DOUBLE_WALL = {
  key: 'bodyDoubleWall_mm',
  title: 'double wall of the body, as the gauge reads it',
  kind: 'number',
  unit: 'mm',
  above: 0,
  max: 2,
} as const satisfies NumberField;
export const CAP_LENGTH = {
  key: 'capLength_mm',
  title: 'length of the cap over its end',
  kind: 'number',
  unit: 'mm',
  above: 0,
  max: 100,
} as const satisfies NumberField;
export const CAP_DIAMETER = {
  key: 'capOuterDiameter_mm',
  title: 'outer diameter of the cap',
  kind: 'number',
  unit: 'mm',
  above: 0,
  max: 50,
} as const satisfies NumberField;
export const CAP_DOUBLE_WALL = {
  key: 'capDoubleWall_mm',
  title: 'double wall of the cap, as the gauge reads it',
  kind: 'number',
  unit: 'mm',
  above: 0,
  max: 2,
} as const satisfies NumberField;
export const CLOSED_LENGTH = {
  key: 'closedLength_mm',
  title: 'length of the locked shell',
  kind: 'number',
  unit: 'mm',
  above: 0,
  max: 200,
} as const satisfies NumberField;
export const SHELL_MASS = {
  key: 'shellMass_mg',
  title: 'mass of the empty shell',
  kind: 'number',
  unit: 'mg',
  above: 0,
  max: 5000,
} as const satisfies NumberField;
export const MATERIAL = {
  key: 'material',
  title: 'material of the shell',
  kind: 'choice',
  choices: SHELL_MATERIALS,
} as const satisfies Field;

export const GEOMETRY = {
  text: 'geometry of a cylinder with hemispherical end',
  read: 'geometry',
} as const satisfies Source;
export const NO_STANDARD =
  'No pharmacopoeia standardises dimensions: charts differ, and shells change with moisture, so measure the lot at 20-25 degC and 45-55 % relative humidity.';

import { ruleTester } from './rule-tester.mjs';
import { unitNames } from './unit-names.mjs';

const stopped = (code, ...names) => ({ code, errors: names.map((name) => ({ messageId: 'unit', data: { name } })) });

ruleTester.run('unit-names', unitNames, {
  valid: [
    'export interface A { readonly mass_mg: number; readonly nBores: number; readonly mean: number; readonly name: string }',
    'export interface A { readonly isFull: boolean; readonly step: 1 | 2 | 3; readonly "bulkDensity_g_per_mL": number }',
    'export function fillMass_mg({ area_mm2 }: { area_mm2: number }): number { return area_mm2 }',
    'export function boreCount(parts: readonly string[]): number { return parts.length }',
    'export const depth_mm = (turns_deg: number): number => turns_deg;',
    'export const REST_s = 5;',
    'export const NAMES = ["a"];',
    'const local = 5; function inner(a: number): number { return a } interface Own { a: number } export const b = "x";',
    '/** In the unit of its field. */ type Bound = number; export interface A { readonly least: Bound }',
    'export type StepCount = number; /** A weight of its own, no unit. */ export type Weight = number;',
    'export { mass } from "./elsewhere.ts";',
    'export class Stream { private words: number[] = []; #state = 0; next_frac(): number { return 0 } }',
    'export function f(mass: string | boolean, list: readonly string[]): void {}',
    'export const schema = z.strictObject({ claim_mg: z.number().positive(), name: z.string().max(5) });',
    'export const schema = z.strictObject({ volume: z.string().transform(Number) });',
    'export type Brand = string & { readonly of: unique symbol };',
  ],
  invalid: [
    stopped('export interface A { readonly mass: number }', 'mass'),
    stopped('export interface A { readonly "bulk density": number }', 'bulk density'),
    stopped(
      'export interface A { masses: readonly number[]; other: Float64Array; third: Quantity }',
      'masses',
      'other',
      'third',
    ),
    stopped(
      'export interface A { a: ReadonlyArray<number>; b: Array<Quantity>; c: Readonly<number[]> }',
      'a',
      'b',
      'c',
    ),
    stopped('export interface A { mass?: number | undefined; range: [number, string] | null }', 'mass', 'range'),
    stopped('export interface A { inner: { mass: number }; list: readonly { depth: number }[] }', 'mass', 'depth'),
    stopped('export interface A { byName: Readonly<Record<string, { mass: number }>> }', 'mass'),
    stopped('export interface A { predict(settings: { height: number }): { mass: number } }', 'height', 'mass'),
    stopped('export interface A { readonly predict: (height: number) => number }', 'predict', 'height'),
    stopped('export type A = { mass: number } | { code: string }', 'mass'),
    stopped('export function fillMass(area_mm2: number): number { return area_mm2 }', 'fillMass'),
    stopped('export function f_mg(area: number, ...rest: number[]): number { return area }', 'area', 'rest'),
    stopped('export function f({ area }: { area: number }): void {}', 'area'),
    stopped('export function f(area = 5): void {}', 'area'),
    stopped('export const f = (area: number): readonly number[] => [area];', 'f', 'area'),
    stopped('export const REST = 5;', 'REST'),
    stopped('export const STEPS = [1, -2.5] as const;', 'STEPS'),
    stopped('export const LIMIT: number = load();', 'LIMIT'),
    stopped(
      'export class A { mass = 5; depth: number; constructor(area: number) {} height(): number { return 1 } }',
      'mass',
      'depth',
      'area',
      'height',
    ),
    stopped('interface Own { mass: number } export function f(own: Own): void {}', 'mass'),
    stopped('interface Own { mass: number } export { Own };', 'mass'),
    stopped(
      'export const schema = z.strictObject({ claim: z.number().positive(), all: z.array(z.int()).min(1) });',
      'claim',
      'all',
    ),
    stopped('export const schema = z.strictObject({ a: z.coerce.number().exactOptional() });', 'a'),
    {
      code: '/** Any share. */ export type Share = number;',
      errors: [{ messageId: 'alias', data: { name: 'Share' } }],
    },
  ],
});

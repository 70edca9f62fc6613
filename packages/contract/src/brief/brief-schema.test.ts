import type { Brief } from '@fillwright/engine/design';
import { describe, expectTypeOf, test } from 'vitest';
import type { z } from 'zod';
import type { briefSchema } from './brief-schema.ts';

/** The same type with every `readonly` taken off, since schemas make plain data. */
type Writable<T> = T extends readonly [infer One]
  ? [Writable<One>]
  : T extends readonly (infer Item)[]
    ? Writable<Item>[]
    : T extends object
      ? { -readonly [K in keyof T]: Writable<T[K]> }
      : T;

describe('briefSchema', () => {
  test("property: its output is exactly the engine's brief: every field, and no other", () => {
    expectTypeOf<Writable<z.output<typeof briefSchema>>>().toEqualTypeOf<Writable<Brief>>();
  });
  test('property: what is written may be one number, a spread, or guess', () => {
    type Material = z.input<typeof briefSchema>['parts'][0]['material'];
    expectTypeOf<0.5>().toExtend<Material['bulkDensity_g_per_mL']>();
    expectTypeOf<{ mean: number; sd: number; n: number }>().toExtend<Material['bulkDensity_g_per_mL']>();
    expectTypeOf<'guess'>().not.toExtend<Material['bulkDensity_g_per_mL']>();
    expectTypeOf<'guess'>().toExtend<Material['feedDensity_g_per_mL']>();
  });
});

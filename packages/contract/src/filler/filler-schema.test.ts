import type { Filler } from '@fillwright/engine/fillers';
import { describe, expectTypeOf, test } from 'vitest';
import type { z } from 'zod';
import type { fillerSchema } from './filler-schema.ts';

/** The same type with every `readonly` taken off, since schemas make plain data. */
type Writable<T> = T extends readonly (infer Item)[]
  ? Writable<Item>[]
  : T extends object
    ? { -readonly [K in keyof T]: Writable<T[K]> }
    : T;

describe('fillerSchema', () => {
  test("property: its output is exactly the engine's filler and the number of the form", () => {
    expectTypeOf<Writable<z.output<typeof fillerSchema>>>().toEqualTypeOf<Writable<Filler & { format: 1 }>>();
  });
});

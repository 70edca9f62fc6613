import type { z } from 'zod';
import { strictMapping } from './strict-mapping.ts';

/** The same keys; those whose value may be undefined become keys that may be left out. */
type Defined<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};
type Flat<T> = { [K in keyof T]: T[K] };

/** Schema of a mapping with known keys: what is written, and what the engine gets. */
export type MappingSchema<S extends z.core.$ZodShape> = z.ZodPipe<
  z.ZodObject<S, z.core.$strict>,
  z.ZodTransform<Flat<Defined<z.output<z.ZodObject<S, z.core.$strict>>>>>
>;

/**
 * Schema of a mapping with known keys. A value that reads as "not given" (`guess`) leaves its key out. The message of an
 * issue is the list of the known keys.
 *
 * @param shape - schema by key
 * @param what - one phrase for editors
 * @returns the schema
 */
export function mappingSchema<S extends z.core.$ZodShape>(shape: S, what: string): MappingSchema<S> {
  return strictMapping(shape, what).transform((values) =>
    Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)),
  ) as unknown as MappingSchema<S>;
}

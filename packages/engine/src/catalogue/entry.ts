import type { Field, ValuesOf } from './field.ts';

/** Where an equation, table or limit comes from. */
export interface Source {
  /** Author or body, title, year, table or page. */
  readonly text: string;
  /** How far the source itself was read: `seen`, `secondary`, `from memory`, `geometry`, `common practice, no source`. */
  readonly read: 'seen' | 'secondary' | 'from memory' | 'geometry' | 'common practice, no source';
}

/** One published computation. Everything the product prints can be opened down to entries of this form. */
export interface Entry {
  /** `<room>.<name>` in kebab case; never reused for something else. */
  readonly id: string;
  readonly title: string;
  /** LaTeX, symbols explained by the titles of the fields. */
  readonly equation: string;
  readonly inputs: readonly Field[];
  readonly outputs: readonly Field[];
  readonly sources: readonly Source[];
  /** Where it holds, and what happens outside. */
  readonly validity: string;
  /** What the result rests on: exact arithmetic, a measured law, a habit of the trade. */
  readonly restsOn: string;
  readonly compute: (inputs: never) => unknown;
}

interface EntryOf<I extends readonly Field[], O extends readonly Field[]> extends Omit<Entry, 'compute'> {
  readonly inputs: I;
  readonly outputs: O;
  readonly compute: (inputs: ValuesOf<I>) => ValuesOf<O>;
}

/**
 * Declares a catalogue entry; the types of `compute` follow from the fields.
 *
 * @param entry - the entry as plain data with its function
 * @returns the entry unchanged
 * @throws nothing
 * @source none: bookkeeping
 */
export function defineEntry<const I extends readonly Field[], const O extends readonly Field[]>(
  entry: EntryOf<I, O>,
): EntryOf<I, O> {
  return entry;
}

import type { Entry } from '#catalogue';
import { gaugeEntries } from './gauge-entries.ts';
import { grossEntries } from './gross-entries.ts';
import { guardEntries } from './guard-entries.ts';
import { sortingEntries } from './sorting-entries.ts';

/** Catalogue entries of this area. */
export const conformityEntries: readonly Entry[] = [
  ...grossEntries,
  ...sortingEntries,
  ...guardEntries,
  ...gaugeEntries,
];

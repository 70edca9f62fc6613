import type { Entry } from '#catalogue';
import { countEntries } from './count-entries.ts';
import { meanEntries } from './mean-entries.ts';
import { sampleEntries } from './sample-entries.ts';
import { toleranceEntries } from './tolerance-entries.ts';

/** Catalogue entries of this area. */
export const inferenceEntries: readonly Entry[] = [
  ...sampleEntries,
  ...meanEntries,
  ...countEntries,
  ...toleranceEntries,
];

import type { Entry } from '#catalogue';
import { crossedEntry } from './crossed-entry.ts';
import { groupEntries } from './group-entries.ts';
import { causesEntry } from './causes-entry.ts';
import { effectsEntry } from './effects-entry.ts';
import { limitsEntry } from './limits-entry.ts';
import { nestedEntry } from './nested-entry.ts';

/** Catalogue entries of this area. */
export const varianceEntries: readonly Entry[] = [
  ...groupEntries,
  nestedEntry,
  crossedEntry,
  limitsEntry,
  effectsEntry,
  causesEntry,
];

import type { Entry } from '#catalogue';
import { crossedEntry } from './crossed-entry.ts';
import { groupEntries } from './group-entries.ts';
import { causesEntry } from './causes-entry.ts';
import { nestedEntry } from './nested-entry.ts';

/** Catalogue entries of this area. */
export const varianceEntries: readonly Entry[] = [...groupEntries, nestedEntry, crossedEntry, causesEntry];

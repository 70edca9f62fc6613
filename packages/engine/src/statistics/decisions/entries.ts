import type { Entry } from '#catalogue';
import { dosageUnitEntries } from './dosage-unit-entries.ts';
import { judgementEntries } from './judgement-entries.ts';
import { probabilityEntries } from './probability-entries.ts';

/** Catalogue entries of the tests of the pharmacopoeias. */
export const decisionEntries: readonly Entry[] = [...dosageUnitEntries, ...probabilityEntries, ...judgementEntries];

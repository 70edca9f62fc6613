import type { Entry } from '#catalogue';
import { DOSING_METHODS } from './dosing-methods.ts';

/** Catalogue entries of all ways of dosing. */
export const entries: readonly Entry[] = DOSING_METHODS.flatMap((method) => method.entries);

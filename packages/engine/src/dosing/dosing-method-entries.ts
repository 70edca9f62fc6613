import type { Entry } from '#catalogue';
import { entries as measuringDisc } from './measuring-disc/index.ts';

/**
 * Catalogue entries by way of dosing. A file apart from the methods, so that a page that doses need not load the catalogue; a
 * test holds the two lists to each other.
 */
export const DOSING_METHOD_ENTRIES: Readonly<Record<string, readonly Entry[]>> = { 'measuring-disc': measuringDisc };

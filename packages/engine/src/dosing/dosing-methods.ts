import type { DosingMethod } from './dosing.ts';
import { measuringDisc } from './measuring-disc/index.ts';

/** Every way of dosing, in the order in which they are offered. Only this list and that of their entries name one. */
export const DOSING_METHODS: readonly DosingMethod[] = [measuringDisc];

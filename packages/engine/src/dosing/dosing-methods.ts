import type { DosingMethod } from './dosing.ts';
import { measuringDisc } from './measuring-disc/index.ts';

/** Every way of dosing, in the order in which they are offered. The only place that names one. */
export const DOSING_METHODS: readonly DosingMethod[] = [measuringDisc];

import type { Entry } from '#catalogue';
import { adjustmentEntries } from './adjustment-entries.ts';
import { designEntries } from './design-entries.ts';
import { limitEntries } from './limits-entries.ts';
import { runLengthEntries } from './run-length-entries.ts';
import { signalEntries } from './signal-entries.ts';

/** Catalogue entries of control charts and feedback adjustment. */
export const chartEntries: readonly Entry[] = [
  ...limitEntries,
  ...signalEntries,
  ...runLengthEntries,
  ...designEntries,
  ...adjustmentEntries,
];

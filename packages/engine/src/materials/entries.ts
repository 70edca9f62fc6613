import type { Entry } from '#catalogue';
import { compressionEntries } from './compression-entries.ts';
import { flowEntries } from './flow-entries.ts';
import { flowFunctionEntries } from './flow-function-entries.ts';
import { mixtureEntries } from './mixture-entries.ts';
import { stressEntries } from './stress-entries.ts';

export const entries: readonly Entry[] = [
  ...mixtureEntries,
  ...flowEntries,
  ...flowFunctionEntries,
  ...compressionEntries,
  ...stressEntries,
];

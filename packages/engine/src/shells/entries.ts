import type { Entry } from '#catalogue';
import { geometryEntries } from './geometry-entries.ts';
import { moistureEntries } from './moisture-entries.ts';

export const entries: readonly Entry[] = [...geometryEntries, ...moistureEntries];

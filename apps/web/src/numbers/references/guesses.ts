import type { Guess } from '@fillwright/engine/quantity';

/** What the design room takes where a brief says nothing. @source common practice, no source; the tests hold them to the engine */
export const GUESSED = {
  betweenTimes_pct: { basis: 'guess', mean: 1, sd: 0.3, halvedBy: 'machine-record' },
  sampleCount: 20,
  setUpSampleCount: 1,
  assayError_pct: 1,
} as const satisfies Record<string, Guess | number>;

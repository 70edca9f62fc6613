import type { Entry } from '#catalogue';
import { assuranceEntries } from './assurance/entries.ts';
import { capabilityEntries } from './capability/entries.ts';
import { chartEntries } from './charts/entries.ts';
import { conformityEntries } from './conformity/entries.ts';
import { decisionEntries } from './decisions/entries.ts';
import { designEntries } from './designs/entries.ts';
import { distributionEntries } from './distributions/entries.ts';
import { inferenceEntries } from './inference/entries.ts';
import { randomEntries } from './random/entries.ts';
import { samplingEntries } from './sampling/entries.ts';
import { varianceEntries } from './variance/entries.ts';

/** Catalogue entries of the functions of stats, area by area. */
export const entries: readonly Entry[] = [
  ...distributionEntries,
  ...inferenceEntries,
  ...decisionEntries,
  ...assuranceEntries,
  ...chartEntries,
  ...varianceEntries,
  ...capabilityEntries,
  ...samplingEntries,
  ...conformityEntries,
  ...designEntries,
  ...randomEntries,
];

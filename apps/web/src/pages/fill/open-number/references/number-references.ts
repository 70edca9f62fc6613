import type { Candidate, CandidateDetails, SearchInput } from '@fillwright/engine/design';
import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import type { NumberKey, NumberReference, NumberReferences } from '../number-reference.ts';
import { discReferences } from './disc-references.ts';
import { limitReferences } from './limit-references.ts';
import { outlookReferences } from './outlook-references.ts';
import { pageFacts, type PageFacts } from './page-facts.ts';
import { shellReferences } from './shell-references.ts';
import { targetReferences } from './target-references.ts';

type Named = readonly [NumberKey, NumberReference];

/** Numbers that only one way of dosing has. */
const OF_METHOD: Readonly<Record<string, (facts: PageFacts) => readonly Named[]>> = {
  'measuring-disc': discReferences,
};

/**
 * How the catalogue computes every number of the bench: entry, inputs, output, and where the inputs come from.
 *
 * @param candidate - the set-up on the page
 * @param details - of the same set-up; left out while they are computed, then numbers that need them are left out too
 * @param input - brief, filler and shells
 * @returns references by key; computing one gives its `value`, the number on the page
 */
export function numberReferences(
  candidate: Candidate,
  details: CandidateDetails | undefined,
  input: SearchInput,
): NumberReferences {
  const facts = pageFacts(candidate, details, input);
  if (!facts) return {};
  const named = [
    ...(OF_METHOD[candidate.method]?.(facts) ?? []),
    ...shellReferences(facts),
    ...outlookReferences(facts),
    ...limitReferences(facts),
    ...targetReferences(facts),
    ...withoutEntry(facts),
  ];
  return Object.fromEntries(named.map(([key, reference]) => [key, { ...withOwnOrigins(reference), key }]));
}

/** Builders share what they know of inputs: only what this reference uses stays. */
function withOwnOrigins(reference: NumberReference): NumberReference {
  const { origins, inputs } = reference;
  if (!origins) return reference;
  return { ...reference, origins: Object.fromEntries(Object.entries(origins).filter(([key]) => key in inputs)) };
}

/** Numbers that no entry of the catalogue gives by itself; the panel says so. */
function withoutEntry({ candidate, details }: PageFacts): readonly Named[] {
  const { titles, remarks } = OPEN_NUMBER_WORDS;
  const { mass_mg, spread, stations } = candidate.prediction;
  const none = { entry: '', inputs: {}, output: '' } as const;
  const last = stations.at(-1);
  return [
    [
      'mass',
      {
        ...{ ...none, unit: 'mg', title: titles.dose, value: mass_mg },
        ...(last ? { inputs: { mass_mg }, origins: { mass_mg: { number: `mass:${last.station}` } } } : {}),
        remark: remarks.dose,
      },
    ],
    ...(details
      ? [
          [
            'mean',
            { ...none, unit: 'mg', title: titles.mean, value: details.interval.mean_mg, remark: remarks.mean },
          ] as const,
        ]
      : []),
    ['spread', { ...none, unit: '%', title: titles.spread, value: spread.unit_pct, remark: remarks.spread(spread) }],
  ];
}

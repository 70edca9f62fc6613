import type { Candidate, CandidateDetails, SearchInput } from '@fillwright/engine/design';
import { CAUSE_WORDS, OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import type { NumberKey, NumberReference, NumberReferences } from '../number-reference.ts';
import { discReferences } from './disc-references.ts';
import { forecastReferences } from './forecast-references.ts';
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
  const ofMethod = OF_METHOD[candidate.method]?.(facts) ?? [];
  const named = [
    ...ofMethod,
    ...shellReferences(facts),
    ...outlookReferences(facts),
    ...limitReferences(facts),
    ...targetReferences(facts),
    ...forecastReferences(facts),
    ...wholeReferences(facts, ofMethod),
  ];
  return Object.fromEntries(named.map(([key, reference]) => [key, { ...withOwnOrigins(reference), key }]));
}

/** Builders share what they know of inputs: only what this reference uses stays. */
function withOwnOrigins(reference: NumberReference): NumberReference {
  const { origins, inputs } = reference;
  if (!origins) return reference;
  return { ...reference, origins: Object.fromEntries(Object.entries(origins).filter(([key]) => key in inputs)) };
}

/** The dose as a whole: what the last station leaves, before a trial the mean to expect; and the spread around it. */
function wholeReferences({ candidate, details }: PageFacts, ofMethod: readonly Named[]): readonly Named[] {
  const { titles, remarks } = OPEN_NUMBER_WORDS;
  const { mass_mg, spread, stations } = candidate.prediction;
  const last = `mass:${stations.at(-1)?.station ?? 0}` as const;
  const lastMass = ofMethod.find(([key]) => key === last)?.[1] ?? { entry: '', inputs: {}, output: '', unit: 'mg' };
  const causes = spread.components.filter(({ sd_pct }) => sd_pct > 0);
  return [
    ['mass', { ...lastMass, title: titles.dose, value: mass_mg, remark: remarks.dose }],
    ...(details
      ? [['mean', { ...lastMass, title: titles.mean, value: details.interval.mean_mg, remark: remarks.mean }] as const]
      : []),
    [
      'spread',
      {
        entry: 'dosing.unit-spread',
        inputs: { causes_pct: causes.map(({ sd_pct }) => sd_pct) },
        origins: { causes_pct: { basis: spread.basis } },
        ...{
          output: 'unit_pct',
          title: titles.spread,
          value: spread.unit_pct,
          items: { causes_pct: causes.map(({ cause }) => CAUSE_WORDS[cause] ?? cause) },
        },
      },
    ],
  ];
}

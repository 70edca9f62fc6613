import type { TestOutlook } from '@fillwright/engine/design';
import { OPEN_NUMBER_WORDS, TEST_WORDS } from '@fillwright/words/en';
import type { InputOrigin, NumberKey, NumberReference } from '../number-reference.ts';
import { GUESSED } from './guesses.ts';
import type { PageFacts } from './page-facts.ts';

type Named = readonly [NumberKey, NumberReference];

/**
 * Shares outside after set-up, and what the tests of the route would say.
 *
 * @param facts - candidate with its context
 * @returns references by key
 */
export function outlookReferences(facts: PageFacts): readonly Named[] {
  const { details } = facts;
  return [
    ...setUpReferences(facts),
    ...(details?.outlook.tests.flatMap((test, i) => testReferences(facts, test, i)) ?? []),
    ...(details?.outlook.contents.map(({ substance, mean_pct, unit_pct, bias_pct, acceptanceValue }, i): Named => {
      const title = OPEN_NUMBER_WORDS.titles.contentAcceptance(substance);
      const lot = { mean_pct, sd_pct: unit_pct, biasSd_pct: bias_pct };
      return [`content-acceptance:${i}`, { ...acceptance(lot, acceptanceValue.median_pct), title }];
    }) ?? []),
  ];
}

function setUpReferences({ candidate, details, input }: PageFacts): readonly Named[] {
  const { brief, filler } = input;
  const { unit_pct, unsure_pct, basis, components } = candidate.prediction.spread;
  const times = brief.record?.betweenTimes_pct ?? GUESSED.betweenTimes_pct;
  const stroke_pct2 = components.reduce((sum, c) => sum + (c.sharedBy === 'stroke' ? c.sd_pct * c.sd_pct : 0), 0);
  const { origins, titles } = OPEN_NUMBER_WORDS;
  const dossier: InputOrigin = { words: origins.dossier };
  const unit: InputOrigin = { number: 'spread', basis };
  const sampleCount = details?.card?.sampleCount ?? brief.inProcess.sampleCount ?? GUESSED.sampleCount;
  const common = {
    entry: 'design.after-set-up',
    inputs: {
      ...{ unit_pct, unitSd_pct: unsure_pct, strokeShare_frac: stroke_pct2 / (unit_pct * unit_pct) },
      ...{ betweenTimes_pct: times.mean, betweenTimesSd_pct: times.sd, sampleCount },
      boreCount: filler.carriers.boreCount,
      setUpSampleCount: brief.record?.setUpSampleCount ?? GUESSED.setUpSampleCount,
      meanAction_pct: brief.inProcess.meanAction_pct,
      individualAction_pct: brief.inProcess.individualAction_pct,
    },
    origins: {
      ...{ unit_pct: unit, unitSd_pct: unit, strokeShare_frac: unit },
      ...{ betweenTimes_pct: { quantity: times }, betweenTimesSd_pct: { quantity: times, isSolved: true as const } },
      ...{ sampleCount: dossier, boreCount: { words: origins.filler(filler.name) } },
      ...{ meanAction_pct: dossier, individualAction_pct: dossier },
    },
  };
  const { capsulesOutside_frac, sampleMeansOutside_frac, setUp_pct } = candidate.afterSetUp;
  return [
    [
      'outside-means',
      { ...common, output: 'sampleMeansOutside_frac', title: titles.outsideMeans, value: sampleMeansOutside_frac },
    ],
    [
      'outside-capsules',
      { ...common, output: 'capsulesOutside_frac', title: titles.outsideCapsules, value: capsulesOutside_frac },
    ],
    ['set-up', { ...common, output: 'setUp_pct', title: titles.setUp, value: setUp_pct }],
  ];
}

interface Lot {
  readonly mean_pct: number;
  readonly sd_pct: number;
  readonly biasSd_pct: number;
}

/** Units of a lot at the mean spread: as the route judges them, by content or by mass variation. */
function lotOf({ candidate, details, input }: PageFacts, test: TestOutlook): Lot | undefined {
  const { unit_pct } = candidate.prediction.spread;
  const content = details?.outlook.contents.find(({ substance }) => substance === test.substance);
  if (!content) return undefined;
  const { mean_pct } = content;
  if (test.test === 'dosage-units-by-content')
    return { mean_pct, sd_pct: content.unit_pct, biasSd_pct: content.bias_pct };
  const biasSd_pct = input.brief.parts[0].assayError_pct ?? GUESSED.assayError_pct;
  return { mean_pct, sd_pct: (unit_pct * mean_pct) / 100, biasSd_pct };
}

function testReferences(facts: PageFacts, test: TestOutlook, i: number): readonly Named[] {
  const { pass_frac, acceptanceValue } = test;
  if (pass_frac === undefined) return [];
  const { unsure_pct, unit_pct } = facts.candidate.prediction.spread;
  const { titles, remarks } = OPEN_NUMBER_WORDS;
  const name = TEST_WORDS[test.test];
  const lot = lotOf(facts, test);
  const isExact = unsure_pct === 0 && (test.test === 'uniformity-of-mass' || lot?.biasSd_pct === 0);
  const entry =
    test.test === 'uniformity-of-mass'
      ? {
          entry: 'statistics.uniformity-of-mass-pass',
          inputs: { mean_mg: facts.target.fill_mg, relativeSd_pct: unit_pct },
          origins: { mean_mg: { number: 'target' }, relativeSd_pct: { number: 'spread' } },
        }
      : {
          entry: 'statistics.dosage-units-pass',
          inputs: { mean_pct: lot?.mean_pct, sd_pct: lot?.sd_pct },
          origins: { sd_pct: { number: 'spread' } },
        };
  const pass: NumberReference = {
    ...(entry as Pick<NumberReference, 'entry' | 'inputs' | 'origins'>),
    ...{ output: 'pass_frac', title: titles.pass(name) },
    ...(isExact ? { value: pass_frac } : { remark: remarks.averaged(pass_frac) }),
  };
  const found: Named[] = [[`pass:${i}`, pass]];
  if (acceptanceValue && lot)
    found.push([`acceptance:${i}`, { ...acceptance(lot, acceptanceValue.median_pct), title: titles.acceptance(name) }]);
  return found;
}

function acceptance(lot: Lot, median_pct: number): Omit<NumberReference, 'title'> {
  return {
    entry: 'statistics.acceptance-value-quantiles',
    inputs: { ...lot, probabilities_frac: [0.5, 0.95] },
    origins: { sd_pct: { number: 'spread' }, biasSd_pct: { number: 'set-up' } },
    ...{ output: 'acceptanceValues_pct', item: 0, value: median_pct },
  };
}

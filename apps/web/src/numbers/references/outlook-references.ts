import type { ContentOutlook, TestOutlook } from '@fillwright/engine/design';
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
    ...(details?.outlook.contents.map((content, i): Named => {
      const title = OPEN_NUMBER_WORDS.titles.contentAcceptance(content.substance);
      const value = content.acceptanceValue.median_pct;
      return [
        `content-acceptance:${i}`,
        { ...lotInputs(facts, content, 'by-content'), output: 'median_pct', title, value },
      ];
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

/** Units of a lot as the route judges them, by content or by mass variation: inputs of the catalogue's outlook. */
function lotInputs(
  { candidate, input }: PageFacts,
  content: ContentOutlook,
  judged: 'by-content' | 'by-mass-variation',
): Pick<NumberReference, 'entry' | 'inputs' | 'origins'> {
  const { unit_pct, unsure_pct } = candidate.prediction.spread;
  const { mean_pct, bias_pct, blend_pct } = content;
  const common = { judged, mean_pct, unit_pct, unitSd_pct: unsure_pct };
  const { origins: words } = OPEN_NUMBER_WORDS;
  const origins = { unit_pct: { number: 'spread' }, unitSd_pct: { number: 'spread' } } as const;
  const entry = 'design.dosage-units-outlook';
  if (judged === 'by-content') {
    const fromSetUp: InputOrigin = { number: 'set-up', words: words.bias };
    const fromBrief: InputOrigin = { words: words.dossier };
    return {
      ...{ entry, inputs: { ...common, blend_pct, bias_pct } },
      origins: { ...origins, bias_pct: fromSetUp, blend_pct: fromBrief },
    };
  }
  const assay_pct = input.brief.parts[0].assayError_pct ?? GUESSED.assayError_pct;
  return {
    entry,
    inputs: { ...common, bias_pct: assay_pct },
    origins: { ...origins, bias_pct: { words: words.assay } },
  };
}

function testReferences(facts: PageFacts, test: TestOutlook, i: number): readonly Named[] {
  const { pass_frac, acceptanceValue } = test;
  if (pass_frac === undefined) return [];
  const { titles } = OPEN_NUMBER_WORDS;
  const name = TEST_WORDS[test.test];
  const passed = { output: 'pass_frac', title: titles.pass(name), value: pass_frac };
  if (test.test === 'uniformity-of-mass') return [[`pass:${i}`, { ...massOutlook(facts), ...passed }]];
  const content = facts.details?.outlook.contents.find(({ substance }) => substance === test.substance);
  if (!content) return [];
  const lot = lotInputs(facts, content, test.test === 'dosage-units-by-content' ? 'by-content' : 'by-mass-variation');
  const value = acceptanceValue?.median_pct;
  return [
    [`pass:${i}`, { ...lot, ...passed }],
    ...(value === undefined
      ? []
      : [[`acceptance:${i}`, { ...lot, output: 'median_pct', title: titles.acceptance(name), value }] as const]),
  ];
}

function massOutlook({ candidate, target }: PageFacts): Pick<NumberReference, 'entry' | 'inputs' | 'origins'> {
  const { unit_pct, unsure_pct } = candidate.prediction.spread;
  return {
    entry: 'design.uniformity-of-mass-outlook',
    inputs: { mean_mg: target.fill_mg, unit_pct, unitSd_pct: unsure_pct },
    origins: { mean_mg: { number: 'target' }, unit_pct: { number: 'spread' }, unitSd_pct: { number: 'spread' } },
  };
}

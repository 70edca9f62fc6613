import type { Brief, Correction, RankedCandidate } from '@fillwright/engine/design';
import { adjusterName, CONSEQUENCE_WORDS, DESIGN_WORDS, findingSentence } from '@fillwright/words/en';
import { columns, wrapped } from '../layout.ts';
import { fixed, short, signed } from './shown.ts';

/**
 * What is set at the machine, and the first weights as a decision.
 *
 * @param brief - for the sample size
 * @param candidate - the set-up
 * @returns the lines
 */
export function settingSheetText(brief: Brief, candidate: RankedCandidate): string {
  return [
    DESIGN_WORDS.sheet(candidate.rank),
    columns([...partRows(candidate), ...pinRows(candidate)], '  '),
    ...partGains(candidate),
    ...decision(brief, candidate).map((sentence) => wrapped('  ', sentence)),
    ...warnings(candidate),
  ].join('\n');
}

function partRows({ sheet }: RankedCandidate): readonly (readonly string[])[] {
  return sheet.flatMap(({ adjuster, part, isMounted, size }) => {
    if (part === undefined) return [];
    const sizes = Object.entries(size ?? {}).map(([key, value]) => `${short(value)} ${unitOf(key)}`);
    return [[adjuster, part, sizes.join(' x '), isMounted ? DESIGN_WORDS.mounted : DESIGN_WORDS.toFit]];
  });
}

function pinRows({ sheet, prediction, gains }: RankedCandidate): readonly (readonly string[])[] {
  return sheet.flatMap(({ adjuster, station, depth_mm, reading_division }) => {
    const trace = prediction.stations.find((one) => one.station === station);
    if (depth_mm === undefined || !trace) return [];
    const gain = gains.settings.find(({ key }) => key === adjuster);
    const perStep = gain
      ? DESIGN_WORDS.perStep({
          step: `${short(gain.step_mm)} mm`,
          median: fixed(gain.median_mg_per_step),
          low: fixed(gain.low90_mg_per_step),
          high: fixed(gain.high90_mg_per_step),
        })
      : '';
    const force = trace.force_N === undefined ? '' : `${fixed(trace.force_N, 0)} N`;
    return [
      [
        adjusterName(adjuster),
        DESIGN_WORDS.scale(fixed(reading_division ?? NaN)),
        depth_mm === 0 ? DESIGN_WORDS.flush : DESIGN_WORDS.below(short(depth_mm)),
        `${DESIGN_WORDS.station[trace.regime]}${force === '' ? '' : `, ${force}`}`,
        `${fixed(trace.mass_mg, 0)} mg`,
        perStep,
      ],
    ];
  });
}

function partGains({ gains }: RankedCandidate): readonly string[] {
  return gains.parts.map(({ from, to, change_mg, changeWorkingKept_mg, changeAllKept_mg }) => {
    const moves = Math.abs(changeAllKept_mg - change_mg) > 0.05;
    const kept = moves ? DESIGN_WORDS.keptReadings(signed(changeWorkingKept_mg, 0), signed(changeAllKept_mg, 0)) : '';
    return wrapped('  ', DESIGN_WORDS.nextPart(from, to, signed(change_mg)) + kept);
  });
}

function decision(brief: Brief, { expected, card, settings, prediction }: RankedCandidate): readonly string[] {
  const gross = (net_mg: number): string => (card ? fixed(net_mg + card.tare.mean_mg, 0) : '');
  const pins = prediction.stations.map(({ set_mm }) => (set_mm === 0 ? DESIGN_WORDS.flush : short(set_mm))).join(' / ');
  const { low_mg, high_mg, meanLow_mg, meanHigh_mg, under, over } = expected;
  return [
    DESIGN_WORDS.start(`${Object.values(settings.parts).join(', ')}, pins ${pins}`),
    DESIGN_WORDS.firstWeights({
      n: Math.max(100, brief.inProcess.sampleCount ?? 0),
      ...{ low: fixed(low_mg, 0), high: fixed(high_mg, 0), grossLow: gross(low_mg), grossHigh: gross(high_mg) },
    }),
    DESIGN_WORDS.leave(fixed(Math.ceil(meanLow_mg), 0), fixed(Math.floor(meanHigh_mg), 0)),
    ...(under ? [turned(under, { side: 'under', limit_mg: meanLow_mg })] : []),
    ...(over ? [turned(over, { side: 'over', limit_mg: meanHigh_mg })] : []),
    ...((under ?? over) ? [] : [DESIGN_WORDS.noneOnStop]),
    DESIGN_WORDS.stop,
  ];
}

function turned(correction: Correction, at: { side: 'under' | 'over'; limit_mg: number }): string {
  const { adjuster, change_mg_per_step, example_mg, exampleStepCount, brings, isOutsideValidated } = correction;
  const sentence = DESIGN_WORDS.turn({
    ...{ side: at.side, limit: fixed(at.limit_mg, 0), adjuster: adjusterName(adjuster) },
    ...{ change: fixed(change_mg_per_step), example: fixed(example_mg, 0), steps: exampleStepCount },
  });
  const consequence =
    brings.length > 0
      ? ` ${DESIGN_WORDS.brings(brings.map((code) => CONSEQUENCE_WORDS[code] ?? code).join(', '))}`
      : '';
  return sentence + consequence + (isOutsideValidated ? ` ${DESIGN_WORDS.leavesValidated}` : '');
}

function warnings({ prediction, suitability }: RankedCandidate): readonly string[] {
  const notes = [...(suitability.grade === 'suitable' ? [] : suitability.reasons), ...prediction.warnings];
  if (notes.length === 0) return [];
  return [DESIGN_WORDS.warnings, ...notes.map((note) => wrapped('  ', findingSentence(note)))];
}

function unitOf(key: string): string {
  return key.slice(key.indexOf('_') + 1).replace('_per_', '/');
}

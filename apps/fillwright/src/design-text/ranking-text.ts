import type { Brief, Design, RankedCandidate } from '@fillwright/engine/design';
import { CRITERION_WORDS, DESIGN_WORDS, DOSING_METHOD_NAMES } from '@fillwright/words/en';
import { columns } from '../layout.ts';
import { fixed, percent, short } from './shown.ts';

/**
 * The first front as a table, with what decided each place.
 *
 * @param brief - for the limits
 * @param design - the result
 * @returns the lines
 */
export function rankingText(brief: Brief, design: Design): string {
  const { meanAction_pct, individualAction_pct } = brief.inProcess;
  const rows = [DESIGN_WORDS.columns, DESIGN_WORDS.columns2, ...design.candidates.map(row)];
  const decided = design.candidates.flatMap(({ rank, decidedBy }) =>
    decidedBy ? [`  ${DESIGN_WORDS.before(rank, CRITERION_WORDS[decidedBy])}`] : [],
  );
  const behind = design.behind.length > 0 ? [DESIGN_WORDS.behind(design.behind.length)] : [];
  return [
    DESIGN_WORDS.ranking,
    columns(rows, '  '),
    ...decided,
    DESIGN_WORDS.rankingNote(short(meanAction_pct), short(individualAction_pct)),
    ...behind,
  ].join('\n');
}

function row({ rank, size, method, settings, prediction, merits }: RankedCandidate): readonly string[] {
  return [
    String(rank),
    size,
    DOSING_METHOD_NAMES[method] ?? method,
    Object.values(settings.parts).join(' '),
    prediction.stations.map(({ set_mm }) => (set_mm === 0 ? DESIGN_WORDS.flush : short(set_mm))).join(' / '),
    percent(merits.sampleMeansOutside_frac),
    percent(merits.capsulesOutside_frac),
    `${fixed(merits.unit_pct)}±${fixed(prediction.spread.unsure_pct)} %`,
    percent(merits.volumeMargin_frac, 0),
    percent(merits.adjusterMargin_frac, 0),
    String(merits.partsToChangeCount),
  ];
}

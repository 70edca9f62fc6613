import type { Candidate, Criterion, Design, RankedCandidate } from '@fillwright/engine/design';
import { DOSING_METHODS, type SheetLine } from '@fillwright/engine/dosing';
import { CRITERION_WORDS, DOSING_METHOD_NAMES, FILL_WORDS } from '@fillwright/words/en';
import { quantityForReading } from '@fillwright/words/numbers';
import { fixed, inMillimetres, scaleText } from '../../drawing/index.ts';

/** One set-up of the ranking, or the one as set by hand, as texts. */
export interface CandidateRow {
  /** Left out for the set-up that stands as set by hand. */
  readonly rank: number | undefined;
  readonly size: string;
  readonly parts: string;
  readonly settings: string;
  readonly means: string;
  readonly capsules: string;
  readonly spread: string;
  readonly free: string;
  readonly force: string;
  /** Where that force acts; left out where no pin presses. */
  readonly hardestStation: number | undefined;
  readonly change: string;
  readonly decided: string;
  readonly isChosen: boolean;
}

/**
 * The ranking as rows; the set-up as set by hand comes first where it is none of them.
 *
 * @param design - result of the search
 * @param chosen - where the levers stand, with its setting sheet
 * @returns rows in order of merit
 */
export function candidateRows(
  design: Design,
  chosen: { readonly candidate: Candidate; readonly sheet: readonly SheetLine[] },
): readonly CandidateRow[] {
  const rows = design.candidates.map((candidate): CandidateRow => {
    const { rank, decidedBy, sheet } = candidate;
    const isChosen = isSame(candidate, chosen.candidate);
    return { ...figuresOf(candidate, sheet), rank, isChosen, decided: decidedText(rank, decidedBy) };
  });
  if (rows.some(({ isChosen }) => isChosen)) return rows;
  const asSet = { ...figuresOf(chosen.candidate, chosen.sheet), rank: undefined, isChosen: true, decided: '' };
  return [asSet, ...rows];
}

/** @returns whether two set-ups have the same shell, parts and values */
function isSame(one: Candidate, other: Candidate): boolean {
  const { parts, values } = one.settings;
  return (
    one.size === other.size &&
    one.method === other.method &&
    Object.entries(parts).every(([slot, number]) => other.settings.parts[slot] === number) &&
    Object.entries(values).every(([key, value]) => Math.abs((other.settings.values[key] ?? NaN) - value) < 1e-9)
  );
}

/** @returns the ranked candidate of a rank */
export function candidateOfRank(design: Design | undefined, rank: number | undefined): RankedCandidate | undefined {
  return design?.candidates.find((candidate) => candidate.rank === rank);
}

function decidedText(rank: number, decidedBy: Criterion | undefined): string {
  return decidedBy ? FILL_WORDS.decided({ rank: rank + 1, why: CRITERION_WORDS[decidedBy] }) : '';
}

/** The way of dosing is named where there is a choice of them. */
const isOnlyMethod = DOSING_METHODS.length === 1;

type Figures = Omit<CandidateRow, 'rank' | 'isChosen' | 'decided'>;

function figuresOf({ size, method, settings, prediction, merits }: Candidate, sheet: readonly SheetLine[]): Figures {
  const { released_mm, longest_mm, spread, stations } = prediction;
  const percent = (share_frac: number): string => quantityForReading(100 * share_frac, '%', { decimals: 1 });
  const forces_N = stations.map(({ force_N }) => force_N ?? 0);
  const greatest_N = Math.max(0, ...forces_N);
  const hardest = greatest_N > 0 ? stations[forces_N.indexOf(greatest_N)]?.station : undefined;
  const readings = sheet.flatMap(({ reading_division, step_division = NaN, depth_mm }) =>
    reading_division === undefined || depth_mm === 0 ? [] : [scaleText(reading_division, step_division)],
  );
  return {
    size,
    parts: [...(isOnlyMethod ? [] : [DOSING_METHOD_NAMES[method] ?? method]), ...Object.values(settings.parts)].join(
      ', ',
    ),
    settings: readings.join(' '),
    means: percent(merits.sampleMeansOutside_frac),
    capsules: percent(merits.capsulesOutside_frac),
    spread: quantityForReading(spread.unit_pct, '%', { decimals: 1 }),
    free: inMillimetres(longest_mm - released_mm),
    force: hardest === undefined ? '' : quantityForReading(greatest_N, 'N', { decimals: 0 }),
    hardestStation: hardest,
    change: fixed(merits.partsToChangeCount, 0),
  };
}

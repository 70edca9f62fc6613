import type { CauseLeft, PlaceMean, Revolution, WeightsJudgement } from '@fillwright/engine/weights';
import { ACCEPT_WORDS, adjusterName } from '@fillwright/words/en';
import { fixed, percent, signed } from '../design-text/shown.ts';
import { columns } from '../layout.ts';

/** Causes that are printed. */
const MOST_CAUSES = 5;

/**
 * A revolution as a grid with the odd places marked, and what each cause would leave.
 *
 * @param judgement - with a revolution, or without
 * @returns the lines; empty without one
 */
export function placesText({ revolution }: WeightsJudgement): string {
  if (!revolution) return '';
  const { cells_mg, groups, columns: columnMeans, bores } = revolution;
  const odd = new Set(bores.filter(({ isOdd }) => isOdd).map(({ index }) => index));
  const heads = (cells_mg[0] ?? []).map((_, c) =>
    marked(
      columnMeans.find(({ index }) => index === c + 1),
      String(c + 1),
    ),
  );
  const rows = cells_mg.map((row, g) => [
    marked(
      groups.find(({ index }) => index === g + 1),
      ACCEPT_WORDS.group(g + 1),
    ),
    ...row.map((mass_mg, c) => {
      const text = mass_mg === null ? '-' : fixed(mass_mg, 0);
      return odd.has(g * row.length + c + 1) ? `${text}*` : text;
    }),
  ]);
  const means = heads.map((_, c) => {
    const found = columnMeans.find(({ index }) => index === c + 1);
    return found ? fixed(found.net_mg, 0) : '-';
  });
  return [
    ACCEPT_WORDS.revolution,
    columns([[ACCEPT_WORDS.column, ...heads], ...rows, [ACCEPT_WORDS.mean, ...means]], '  '),
    ...oddLines(revolution),
    ACCEPT_WORDS.causes,
    columns(revolution.causes.slice(0, MOST_CAUSES).map(causeRow), '  '),
    `  ${ACCEPT_WORDS.aliased}`,
  ].join('\n');
}

function marked(place: PlaceMean | undefined, text: string): string {
  return place?.isOdd ? `${text}*` : text;
}

function oddLines({ groups, columns: columnMeans, bores }: Revolution): string[] {
  const line = (name: string, { effect_mg, low_mg, high_mg, familywiseP_frac: p }: PlaceMean): string =>
    `  ${ACCEPT_WORDS.odd({
      ...{ name, effect: signed(effect_mg), low: signed(low_mg), high: signed(high_mg) },
      chance: p < 0.0001 ? '< 0.0001' : fixed(p, 4),
    })}`;
  return [
    ...columnMeans.filter(({ isOdd }) => isOdd).map((each) => line(ACCEPT_WORDS.columnOf(each.index), each)),
    ...groups.filter(({ isOdd }) => isOdd).map((each) => line(ACCEPT_WORDS.group(each.index), each)),
    ...bores.map((each) => line(`${ACCEPT_WORDS.group(each.group)}, ${ACCEPT_WORDS.columnOf(each.column)}`, each)),
  ];
}

function causeRow({ cause, group, column, change_mg, residual_frac, isLikely }: CauseLeft): string[] {
  const place = [
    ...(group === undefined ? [] : [ACCEPT_WORDS.group(group)]),
    ...(column === undefined ? [] : [ACCEPT_WORDS.columnOf(column)]),
  ].join(', ');
  const name =
    cause.adjuster === undefined ? ACCEPT_WORDS.anyCause[cause.kind] : ACCEPT_WORDS.stuck(adjusterName(cause.adjuster));
  return [
    ...[name, place, `${signed(change_mg)} mg`, ACCEPT_WORDS.left(percent(residual_frac, 0))],
    isLikely ? ACCEPT_WORDS.fits : '',
  ];
}

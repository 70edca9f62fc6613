import type { PlaceMean, Revolution } from '@fillwright/engine/weights';
import { adjusterName, WEIGHTS_PAGE_WORDS, WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import type { NumberReference } from '../../../numbers/index.ts';
import { capsuleNumber } from '../numbers/capsule-number.ts';
import { meanNumber } from '../numbers/mean-number.ts';
import { placeNumber } from '../numbers/place-number.ts';
import { said, type Said } from '../numbers/said.ts';
import type { Weighed } from '../numbers/weighed.ts';
import type { VerdictRow } from './verdict-row.ts';

const words = WEIGHTS_VERDICT_WORDS.revolution;
const mg = WEIGHTS_PAGE_WORDS.mg;

/**
 * Odd places of a revolution, with what speaks for which cause.
 *
 * @param weighed - masses and judgement
 * @returns a row for each; none without a revolution
 */
export function placeRows(weighed: Weighed): readonly VerdictRow[] {
  const { revolution } = weighed.judgement;
  if (!revolution) return [];
  const { columns, groups, bores } = revolution;
  return [
    ...columns.filter(({ isOdd }) => isOdd).map((place) => lineRow(revolution, 'column', place)),
    ...groups.filter(({ isOdd }) => isOdd).map((place) => lineRow(revolution, 'group', place)),
    ...bores.filter(({ isOdd }) => isOdd).map((bore) => boreRow(weighed, revolution, bore)),
  ];
}

function lineRow(revolution: Revolution, kind: 'column' | 'group', place: PlaceMean): VerdictRow {
  const name = kind === 'column' ? words.columnName(place.index) : words.group(place.index);
  const number = placeNumber(revolution, { kind, place, name });
  const cells = placesOf(revolution, kind, place.index);
  const sign = Math.sign(place.effect_mg);
  const hit = cells.filter((mass_mg) => sign * (mass_mg - revolution.restMean_mg) > 0).length;
  const way = sign < 0 ? words.light1 : words.heavy1;
  const forWhich = kind === 'column' ? words.forPin : words.forGroup;
  return {
    ...{ key: `${kind} ${place.index}`, badge: WEIGHTS_VERDICT_WORDS.act, isAct: true },
    title: said(sign < 0 ? words.light : words.heavy, {
      effect: [mg(Math.abs(place.effect_mg), 0), number],
      place: name,
    }),
    lines: [
      againstRest(revolution, [mg(place.net_mg), meanNumber(cells, { name, mean_mg: place.net_mg })]),
      ...(kind === 'column' ? costsLine(revolution) : []),
      [forWhich({ hit: String(hit), all: String(cells.length), way })],
      [words.tellApart[kind]],
    ],
  };
}

function boreRow(weighed: Weighed, revolution: Revolution, bore: Revolution['bores'][number]): VerdictRow {
  const { group, column, effect_mg, net_mg } = bore;
  const index = weighed.judgement.net_mg?.indexOf(net_mg) ?? -1;
  const opened = index < 0 ? undefined : capsuleNumber(weighed, index);
  return {
    ...{ key: `bore ${group} ${column}`, badge: WEIGHTS_VERDICT_WORDS.act, isAct: true },
    title: said(effect_mg < 0 ? words.light : words.heavy, {
      effect: [mg(Math.abs(effect_mg), 0), opened],
      place: words.boreName({ group, column }),
    }),
    lines: [againstRest(revolution, [mg(net_mg), opened]), [words.forBore], [words.tellApart.bore]],
  };
}

function againstRest(revolution: Revolution, mean: readonly [text: string, number: NumberReference | undefined]): Said {
  const { restMean_mg, restCount } = revolution;
  const rest = restMasses(revolution);
  const isAll = rest.length === restCount && restCount > 1;
  const number = isAll
    ? { ...meanNumber(rest, { name: '', mean_mg: restMean_mg }), title: WEIGHTS_VERDICT_WORDS.numbers.restMean }
    : undefined;
  return said(words.against, { mean, rest: [mg(restMean_mg), number], count: String(restCount) });
}

/** Net masses that stand in no odd place. */
function restMasses({ cells_mg, columns, groups, bores }: Revolution): readonly number[] {
  const isOdd = (places: readonly PlaceMean[], index: number): boolean =>
    places.some((place) => place.isOdd && place.index === index);
  const isOddBore = (group: number, column: number): boolean =>
    bores.some((bore) => bore.isOdd && bore.group === group && bore.column === column);
  return cells_mg.flatMap((row, g) =>
    row.filter(
      (mass_mg, c): mass_mg is number =>
        mass_mg !== null && !isOdd(groups, g + 1) && !isOdd(columns, c + 1) && !isOddBore(g + 1, c + 1),
    ),
  );
}

function placesOf({ cells_mg }: Revolution, kind: 'column' | 'group', index: PlaceMean['index']): readonly number[] {
  const cells = kind === 'group' ? (cells_mg[index - 1] ?? []) : cells_mg.map((row) => row[index - 1] ?? null);
  return cells.filter((mass_mg) => mass_mg !== null);
}

/** What each pin would leave out, were it stuck up. */
function costsLine({ causes }: Revolution): readonly Said[] {
  const pins = causes.flatMap(({ cause: { adjuster }, change_mg }) =>
    adjuster === undefined ? [] : [{ adjuster, change_mg }],
  );
  if (pins.length === 0) return [];
  const listed = [...pins].sort((a, b) => a.change_mg - b.change_mg);
  const texts = listed.map(({ adjuster, change_mg }) =>
    words.costs({ pin: adjusterName(adjuster), cost: mg(Math.abs(change_mg), 0) }),
  );
  return [[words.stuckCosts(texts.join(', '))]];
}

import type { LimitVerdict, NamedCapsule, TestVerdict, Verdict, WeightsJudgement } from '@fillwright/engine/weights';
import {
  LIMIT_REASON_WORDS,
  testArithmetic,
  TEST_REASON_WORDS,
  WEIGHT_TEST_NAMES,
  WEIGHTS_PAGE_WORDS,
} from '@fillwright/words/en';
import { plainNumber } from '@fillwright/words/numbers';

/** One thing that was judged: what, how it stands, and the arithmetic. */
export interface VerdictRow {
  readonly key: string;
  readonly title: string;
  readonly badge: string;
  readonly isAct: boolean;
  readonly lines: readonly string[];
  readonly source?: string;
}

const words = WEIGHTS_PAGE_WORDS;
const MOST_NAMED = 12;
const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
const sentence = (text: string): string => `${capital(text)}.`;
const digits = (value: number, decimals: number): string => words.mg(value, decimals);

/**
 * Everything that was judged, what needs a person first.
 *
 * @param judgement - of the weights
 * @returns rows for the screen and for the page of paper
 */
export function verdictRows(judgement: WeightsJudgement): readonly VerdictRow[] {
  const { limits, tests } = judgement;
  const [mean, single] = (['mean', 'single'] as const).map((what) => limits.find((limit) => limit.what === what));
  const rows = [
    ...placeRows(judgement),
    ...(single ? [singleRow(single, judgement)] : []),
    ...(mean ? [meanRow(mean, judgement)] : []),
    ...tests.map(testRow),
  ];
  const ordered = [...rows.filter(({ isAct }) => isAct), ...rows.filter(({ isAct }) => !isAct)];
  return [...ordered, ...spreadRows(judgement), tareRow(judgement), ...outlookRows(judgement)];
}

function placeRows({ revolution }: WeightsJudgement): readonly VerdictRow[] {
  if (!revolution) return [];
  const rest = { rest: digits(revolution.restMean_mg, 1), count: revolution.restCount };
  const row = (key: string, title: string, net_mg: number): VerdictRow => ({
    ...{ key, title, badge: words.act, isAct: true },
    lines: [words.revolution.against({ mean: digits(net_mg, 1), ...rest }), words.revolution.check],
  });
  const { columns, groups, bores } = revolution;
  const odd = <Place extends { readonly isOdd: boolean }>(places: readonly Place[]): readonly Place[] =>
    places.filter(({ isOdd }) => isOdd);
  const effect = (effect_mg: number): { effect: number } => ({ effect: effect_mg });
  return [
    ...odd(columns).map(({ index, effect_mg, net_mg }) =>
      row(`column ${index}`, words.revolution.columnTitle({ column: index, ...effect(effect_mg) }), net_mg),
    ),
    ...odd(groups).map(({ index, effect_mg, net_mg }) =>
      row(`group ${index}`, words.revolution.groupTitle({ group: index, ...effect(effect_mg) }), net_mg),
    ),
    ...odd(bores).map(({ group, column, effect_mg, net_mg }) =>
      row(`bore ${group} ${column}`, words.revolution.boreTitle({ group, column, ...effect(effect_mg) }), net_mg),
    ),
  ];
}

function badgeOf(verdict: Verdict): string {
  if (verdict === 'pass') return words.inside;
  return verdict === 'fail' ? words.outside : words.verdicts[verdict];
}

function singleRow(limit: LimitVerdict, { net, card }: WeightsJudgement): VerdictRow {
  const { verdict, outside, alerts, netLow_mg, netHigh_mg, reasons } = limit;
  const middle_mg = (netLow_mg + netHigh_mg) / 2;
  const half_frac = (netHigh_mg - netLow_mg) / 2 / middle_mg;
  const range = { low: digits(netLow_mg, 2), high: digits(netHigh_mg, 2) };
  return {
    ...{ key: 'single', badge: badgeOf(verdict), isAct: verdict === 'fail' },
    title: words.single.title({ outside: outside.length, count: net?.capsuleCount ?? 0 }),
    lines: [
      words.single.sum({ target: card?.target_mg ?? middle_mg, half: half_frac, ...range }),
      ...whoLines(outside),
      ...(alerts.length > 0 ? [words.single.alerts(alerts.length)] : []),
      ...reasons.filter((reason) => reason !== 'outside-limits').map((reason) => sentence(LIMIT_REASON_WORDS[reason])),
    ],
  };
}

function meanRow(limit: LimitVerdict, { net, gross, netFrom }: WeightsJudgement): VerdictRow {
  const { verdict, value_mg = NaN, netLow_mg, netHigh_mg, reasons } = limit;
  const mean = digits(value_mg, 1);
  const tare_mg = netFrom.tareMean_mg;
  const isFromGross = gross !== undefined && tare_mg !== undefined;
  const lines = [
    ...(isFromGross
      ? [words.mean.fromGross({ gross: digits(gross.mean.value_mg, 1), tare: digits(tare_mg, 1), net: mean })]
      : []),
    words.mean.limits({ low: digits(netLow_mg, 1), high: digits(netHigh_mg, 1) }),
  ];
  const interval = net && {
    ...{ low: digits(net.mean.low_mg, 1), high: digits(net.mean.high_mg, 1) },
    confidence: plainNumber(100 * net.confidence_frac, { decimals: 0 }),
  };
  return {
    ...{ key: 'mean', badge: badgeOf(verdict), isAct: verdict === 'fail' },
    title: words.mean.title({ mean, count: net?.capsuleCount ?? 0 }),
    lines: [
      lines.join(' '),
      ...(interval ? [words.mean.interval(interval)] : []),
      ...reasons.filter((reason) => reason !== 'outside-limits').map((reason) => sentence(LIMIT_REASON_WORDS[reason])),
    ],
  };
}

function testRow({ test, substance = '', verdict, reasons, numbers, outside, ...rest }: TestVerdict): VerdictRow {
  const sum = testArithmetic(numbers);
  const would = rest.wouldBe === undefined ? [] : [words.would(words.verdicts[rest.wouldBe])];
  return {
    ...{ key: `${test} ${substance}`, badge: words.verdicts[verdict], isAct: verdict === 'fail' },
    title: capital(substance === '' ? WEIGHT_TEST_NAMES[test] : `${WEIGHT_TEST_NAMES[test]}: ${substance}`),
    lines: [
      ...(sum === undefined ? [] : [`${sum}.`]),
      ...whoLines(outside),
      ...reasons.map((reason) => sentence(TEST_REASON_WORDS[reason])),
      ...would,
      ...(rest.lookInto === undefined ? [] : [words.lookInto(rest.lookInto)]),
    ],
    source: rest.source,
  };
}

function whoLines(outside: readonly NamedCapsule[]): readonly string[] {
  if (outside.length === 0) return [];
  const named = outside
    .slice(0, MOST_NAMED)
    .map(({ index, net_mg }) => words.capsule({ number: index + 1, net: digits(net_mg, 1) }));
  const more = outside.length - named.length;
  return [words.who([...named, ...(more > 0 ? [words.andMore(more)] : [])].join(', '))];
}

function spreadRows({ net, gross, netFrom }: WeightsJudgement): readonly VerdictRow[] {
  if (!net) return [];
  const { rsd, sd, mean } = net;
  const isRoot = netFrom.way === 'mean-tare' && netFrom.netSd_mg !== undefined && gross !== undefined;
  const shown = { sd: digits(sd.value_mg, 2), mean: digits(mean.value_mg, 1) };
  const sum = isRoot
    ? words.spread.net({
        ...{ gross: digits(gross.sd.value_mg, 2), shells: digits(netFrom.tareSd_mg ?? NaN, 2) },
        ...{ sd: digits(netFrom.netSd_mg ?? NaN, 2), mean: shown.mean },
      })
    : words.spread.plain(shown);
  const may = words.spread.may({
    ...{ count: net.capsuleCount, low: digits(rsd.low_pct, 1), high: digits(rsd.high_pct, 1) },
  });
  return [
    { key: 'rsd', title: words.spread.title(digits(rsd.value_pct, 1)), badge: '', isAct: false, lines: [sum, may] },
  ];
}

function tareRow({ netFrom, net }: WeightsJudgement): VerdictRow {
  const { way, tareMean_mg = NaN, tareSd_mg = NaN, shellCount = 0, tareStandardError_mg = NaN } = netFrom;
  const none = { key: 'tare', badge: '', isAct: false };
  if (way === 'no-tare') return { ...none, title: words.tare.none, lines: [words.tare.noneHelp] };
  if (way === 'net-given') return { ...none, title: words.choices.bases.net, lines: [] };
  const title = words.tare.title(digits(tareMean_mg, 1));
  if (way === 'own-shell') return { ...none, title, lines: [words.tare.own(net?.capsuleCount ?? 0)] };
  if (shellCount === 0) return { ...none, title, lines: [words.tare.guess] };
  const shells = { count: shellCount, sd: digits(tareSd_mg, 2), error: digits(tareStandardError_mg, 2) };
  return { ...none, title, lines: [words.tare.shells(shells)] };
}

function outlookRows({ assurance, capability }: WeightsJudgement): readonly VerdictRow[] {
  const percent = (value_frac: number): string => plainNumber(100 * value_frac, { upToSignificantDigits: 4 });
  const lines = assurance.map(({ test, lowerBound_frac, atEstimate_frac, confidence_frac }) =>
    lowerBound_frac === undefined
      ? words.assurance.estimate({ test: WEIGHT_TEST_NAMES[test], chance: percent(atEstimate_frac) })
      : words.assurance.bound({
          ...{ test: WEIGHT_TEST_NAMES[test], bound: percent(lowerBound_frac), confidence: percent(confidence_frac) },
        }),
  );
  const index = capability && {
    ...{ ppk: digits(capability.ppk_ratio, 2), count: capability.capsuleCount },
    ...{ low: digits(capability.ppkLow_ratio, 2), high: digits(capability.ppkHigh_ratio, 2) },
  };
  const all = [...lines, ...(index ? [words.capability(index)] : [])];
  return all.length === 0
    ? []
    : [{ key: 'outlook', title: words.assurance.title, badge: '', isAct: false, lines: all }];
}

import type { LimitVerdict, Verdict } from '@fillwright/engine/weights';
import { LIMIT_REASON_WORDS, WEIGHTS_PAGE_WORDS, WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import { plainNumber } from '@fillwright/words/numbers';
import { limitNumber } from '../numbers/limit-number.ts';
import type { SampleNumbers } from '../numbers/sample-numbers.ts';
import { said, type Said } from '../numbers/said.ts';
import type { Weighed } from '../numbers/weighed.ts';
import { asSentence } from './as-sentence.ts';
import type { VerdictRow } from './verdict-row.ts';
import { whoLines } from './who-lines.ts';

const words = WEIGHTS_VERDICT_WORDS;
const mg = WEIGHTS_PAGE_WORDS.mg;

/**
 * The in-process limits on this sample: single capsules, and their mean.
 *
 * @param weighed - masses and judgement
 * @param numbers - of the sample
 * @returns two rows; none without limits
 */
export function limitRows(weighed: Weighed, numbers: SampleNumbers): readonly VerdictRow[] {
  return weighed.judgement.limits.map((limit) =>
    limit.what === 'single' ? singleRow(weighed, numbers, limit) : meanRow(weighed, numbers, limit),
  );
}

function badgeOf(verdict: Verdict): string {
  if (verdict === 'pass') return words.inside;
  return verdict === 'fail' ? words.outside : words.verdicts[verdict];
}

type Edges = Readonly<Record<'low' | 'high', readonly [string, ReturnType<typeof limitNumber> | undefined]>>;

function edgesOf({ judgement: { card } }: Weighed, limit: LimitVerdict, decimals: 1 | 2): Edges {
  const of = limit.what === 'mean' ? 'mean' : 'action';
  const edge = (end: 'low' | 'high', net_mg: number): Edges['low'] => [
    mg(net_mg, decimals),
    card && limitNumber(card, { of, kind: 'net', end }),
  ];
  return { low: edge('low', limit.netLow_mg), high: edge('high', limit.netHigh_mg) };
}

function whyLines({ reasons }: LimitVerdict): readonly Said[] {
  return reasons
    .filter((reason) => reason !== 'outside-limits')
    .map((reason) => [asSentence(LIMIT_REASON_WORDS[reason])]);
}

function singleRow(weighed: Weighed, numbers: SampleNumbers, limit: LimitVerdict): VerdictRow {
  const { net, net_mg = [], card } = weighed.judgement;
  const { verdict, outside, alerts, netLow_mg, netHigh_mg } = limit;
  const middle_mg = card?.target_mg ?? (netLow_mg + netHigh_mg) / 2;
  const half = plainNumber((netHigh_mg - netLow_mg) / 2 / middle_mg, { upToSignificantDigits: 4 });
  const [count, out] = [String(net_mg.length), String(outside.length)];
  const range = net && {
    ...{
      lowest: [mg(net.lowest_mg), numbers.lowest] as const,
      highest: [mg(net.highest_mg), numbers.highest] as const,
    },
  };
  return {
    ...{ key: 'single', badge: badgeOf(verdict), isAct: verdict === 'fail' },
    title: [
      net_mg.length === 0
        ? words.single.notKnown
        : outside.length === 0
          ? words.single.all(count)
          : words.single.some({ outside: out, count }),
    ],
    lines: [
      said(words.single.sum, { target: mg(middle_mg), half, ...edgesOf(weighed, limit, 2) }),
      ...(range ? [said(words.single.range, range)] : []),
      ...whoLines(weighed, outside),
      ...(alerts.length > 0 ? [[words.single.alerts(String(alerts.length))]] : []),
      ...(outside.length > 0 ? [[words.single.setAside]] : []),
      ...whyLines(limit),
    ],
  };
}

function meanRow(weighed: Weighed, numbers: SampleNumbers, limit: LimitVerdict): VerdictRow {
  const { net, gross, netFrom } = weighed.judgement;
  const { verdict, value_mg } = limit;
  const edges = edgesOf(weighed, limit, 1);
  const { tareMean_mg } = netFrom;
  const sum =
    gross && net && tareMean_mg !== undefined
      ? said(words.mean.fromGross, {
          ...{ gross: [mg(gross.mean.value_mg), numbers.grossMean], tare: [mg(tareMean_mg), numbers.tareMean] },
          ...{ net: mg(net.mean.value_mg), ...edges },
        })
      : said(words.mean.limits, edges);
  const between = net && {
    ...{
      low: [mg(net.mean.low_mg), numbers.meanLow] as const,
      high: [mg(net.mean.high_mg), numbers.meanHigh] as const,
    },
    confidence: plainNumber(100 * net.confidence_frac, { decimals: 0 }),
  };
  return {
    ...{ key: 'mean', badge: badgeOf(verdict), isAct: verdict === 'fail' },
    title:
      value_mg === undefined
        ? [words.mean.notKnown]
        : said(words.mean.title, {
            mean: [mg(value_mg), numbers.netMean],
            count: String(weighed.masses_mg.length),
          }),
    lines: [sum, ...(between ? [said(words.mean.interval, between)] : []), ...withoutOdd(weighed), ...whyLines(limit)],
  };
}

/** Of a revolution with an odd place: what the others weigh, which is what a setting acts on. */
function withoutOdd({ judgement: { revolution }, masses_mg }: Weighed): readonly Said[] {
  if (!revolution || revolution.restCount === masses_mg.length) return [];
  const { columns, groups, restMean_mg, restCount } = revolution;
  const [column, group] = [columns.find(({ isOdd }) => isOdd), groups.find(({ isOdd }) => isOdd)];
  const odd = column
    ? words.revolution.columnName(column.index)
    : group
      ? words.revolution.group(group.index)
      : words.revolution.odd;
  return [[words.mean.rest({ rest: mg(restMean_mg), count: String(restCount), odd })]];
}

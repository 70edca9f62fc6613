import { WEIGHTS_PAGE_WORDS, WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import { plainNumber } from '@fillwright/words/numbers';
import { assuranceNumber } from '../numbers/assurance-number.ts';
import type { SampleNumbers } from '../numbers/sample-numbers.ts';
import { said, type Said } from '../numbers/said.ts';
import type { Weighed } from '../numbers/weighed.ts';
import type { VerdictRow } from './verdict-row.ts';

const words = WEIGHTS_VERDICT_WORDS;
const mg = WEIGHTS_PAGE_WORDS.mg;
const MOST_SHARE = 0.9999;

/**
 * What the sample says of itself and of others: spread, tare, assurance, performance.
 *
 * @param weighed - masses and judgement
 * @param numbers - of the sample
 * @returns a row for each
 */
export function sampleRows(weighed: Weighed, numbers: SampleNumbers): readonly VerdictRow[] {
  return [
    ...spreadRows(weighed, numbers),
    tareRow(weighed, numbers),
    ...assuranceRows(weighed),
    ...performanceRows(weighed, numbers),
  ];
}

const QUIET = { badge: '', isAct: false } as const;

function spreadRows({ judgement }: Weighed, numbers: SampleNumbers): readonly VerdictRow[] {
  const { net, gross, netFrom, revolution } = judgement;
  if (!net) return [];
  const { rsd, sd, mean } = net;
  const isRoot = netFrom.way === 'mean-tare' && netFrom.netSd_mg !== undefined && gross !== undefined;
  const [ofSd, ofMean] = [[mg(sd.value_mg, 2), numbers.netSd] as const, mg(mean.value_mg)];
  const sum = isRoot
    ? said(words.spread.net, {
        ...{
          gross: [mg(gross.sd.value_mg, 2), numbers.grossSd],
          shells: [mg(netFrom.tareSd_mg ?? NaN, 2), numbers.shellSd],
        },
        ...{ sd: ofSd, mean: ofMean },
      })
    : said(words.spread.plain, { sd: ofSd, mean: ofMean });
  const ends = {
    ...{ low: [mg(rsd.low_pct), numbers.rsdLow] as const, high: [mg(rsd.high_pct), numbers.rsdHigh] as const },
    count: String(net.capsuleCount),
  };
  const isOdd = revolution !== undefined && revolution.restCount < net.capsuleCount;
  return [
    {
      ...{ key: 'rsd', ...QUIET, title: said(words.spread.title, { rsd: [mg(rsd.value_pct), numbers.rsd] }) },
      lines: [sum, said(words.spread.may, ends), ...(isOdd ? [[words.spread.odd]] : [])],
    },
  ];
}

function tareRow({ judgement: { netFrom, net } }: Weighed, numbers: SampleNumbers): VerdictRow {
  const { way, tareMean_mg = NaN, tareSd_mg = NaN, shellCount = 0, tareStandardError_mg = NaN } = netFrom;
  const row = (title: Said, lines: readonly Said[]): VerdictRow => ({ key: 'tare', ...QUIET, title, lines });
  if (way === 'no-tare') return row([words.tare.none], [[words.tare.noneHelp]]);
  if (way === 'net-given') return row([words.tare.net], []);
  const title = said(words.tare.title, { tare: [mg(tareMean_mg), numbers.tareMean] });
  if (way === 'own-shell') return row(title, [[words.tare.own(net?.capsuleCount ?? 0)]]);
  if (shellCount === 0) return row(title, [[words.tare.guess]]);
  return row(title, [
    said(words.tare.shells, {
      ...{ count: String(shellCount), sd: [mg(tareSd_mg, 2), numbers.shellSd] },
      error: [mg(tareStandardError_mg, 2), numbers.tareError],
    }),
  ]);
}

function assuranceRows(weighed: Weighed): readonly VerdictRow[] {
  const lines = weighed.judgement.assurance.map((each): Said => {
    const { test, substance = '', lowerBound_frac, atEstimate_frac, confidence_frac } = each;
    const name = words.testOf({ test: words.tests[test], substance });
    const found = [share(atEstimate_frac), assuranceNumber(weighed, each, 'found')] as const;
    if (lowerBound_frac === undefined) return said(words.assurance.estimate, { test: name, found });
    return said(words.assurance.bound, {
      ...{
        test: name,
        bound: [share(lowerBound_frac).replace('> ', ''), assuranceNumber(weighed, each, 'bound')],
        found,
      },
      confidence: plainNumber(100 * confidence_frac, { decimals: 0 }),
    });
  });
  if (lines.length === 0) return [];
  return [
    { key: 'assurance', ...QUIET, title: [words.assurance.title], lines: [...lines, [words.assurance.supposes]] },
  ];
}

/** Never 100 %: some capsules leave some doubt. */
function share(value_frac: number): string {
  const text = plainNumber(100 * Math.min(value_frac, MOST_SHARE), { decimals: 2 });
  return `${value_frac > MOST_SHARE ? '> ' : ''}${text}\u202F%`;
}

function performanceRows({ judgement: { capability } }: Weighed, numbers: SampleNumbers): readonly VerdictRow[] {
  if (!capability) return [];
  const { pp_ratio, ppk_ratio, ppkLow_ratio, ppkHigh_ratio, capsuleCount } = capability;
  const about = said(words.performance.about, {
    pp: [mg(pp_ratio, 2), numbers.spreadIndex],
    low: [mg(ppkLow_ratio, 2), numbers.performanceLow],
    high: [mg(ppkHigh_ratio, 2), numbers.performanceHigh],
    count: String(capsuleCount),
  });
  const title = said(words.performance.title, { ppk: [mg(ppk_ratio, 2), numbers.performance] });
  return [{ key: 'performance', ...QUIET, title, lines: [about] }];
}

import { DOMAIN_ERROR_CODES, type CaseResult, type CaseVerdict, type Facts } from '@fillwright/engine/catalogue';
import { domainErrorSentence, REPORT_WORDS, VERDICT_WORDS } from '@fillwright/words/en';
import { plainNumber } from '@fillwright/words/numbers';
import type { Counts } from './case-counts.ts';
import type { Dispute } from './golden-cases.ts';
import { columns, wrapped } from './layout.ts';
import { toleranceText } from './tolerance-text.ts';
import { valueText } from './value-text.ts';

/** What comes first in a group. */
const RANK: Readonly<Record<CaseVerdict, number>> = { fail: 0, 'cannot-tell': 1, disputed: 2, pass: 3 };

interface Report {
  readonly results: readonly CaseResult[];
  readonly summary: Counts;
  readonly groups: Readonly<Record<string, Counts>>;
  readonly disputed: ReadonlyMap<string, Dispute>;
}

/**
 * The qualification report for the terminal: a table for each group, whatever did not pass first, its sources under it.
 *
 * @param report - judged cases with their counts
 * @returns lines
 */
export function reportText({ results, summary, groups, disputed }: Report): string {
  const blocks = Object.entries(groups).map(([group, counts]) => {
    const own = results.filter((result) => result.group === group);
    own.sort((a, b) => RANK[a.verdict] - RANK[b.verdict]);
    const sources = [...new Set(own.map(({ source }) => source))];
    const rows = own.flatMap((result) => rowsOf(result, sources.indexOf(result.source) + 1));
    return [
      `${group}  (${REPORT_WORDS.counts(counts)})`,
      columns([REPORT_WORDS.columns, ...rows], '  '),
      ...reasonsOf(own, disputed),
      `  ${REPORT_WORDS.sources}`,
      ...sources.map((source, i) => wrapped(`  [${i + 1}] `, source)),
      '',
    ].join('\n');
  });
  const totals = Object.entries(groups).map(([group, counts]) => [group, REPORT_WORDS.counts(counts)]);
  return [REPORT_WORDS.title, '', ...blocks, columns(totals), REPORT_WORDS.counts(summary)].join('\n');
}

/** One row for a case with one value; for a list or several outputs one more for each of them. */
function rowsOf(result: CaseResult, source: number): string[][] {
  const { id, expected, deviation, tolerance, verdict } = result;
  const isMany = typeof expected === 'object' && expected !== null;
  const got = (value: unknown): string => (result.reason ? '' : valueText(value));
  const name = (key: string): string => (Array.isArray(expected) ? REPORT_WORDS.item(Number(key) + 1) : key);
  const parts = isMany ? Object.entries(expected) : [];
  return [
    [
      VERDICT_WORDS[verdict],
      id,
      isMany ? '' : valueText(expected),
      result.reason ? REPORT_WORDS.notComputed : isMany ? '' : got(result.got),
      deviation === null ? '-' : plainNumber(deviation, { upToSignificantDigits: 3 }),
      toleranceText(tolerance),
      `[${source}]`,
    ],
    ...parts.map(([key, value]) => ['', `  ${name(key)}`, valueText(value), got(partOf(result.got, key))]),
  ];
}

function partOf(got: unknown, key: string): unknown {
  return typeof got === 'object' && got !== null ? (got as Readonly<Record<string, unknown>>)[key] : undefined;
}

/** Why cases were not computed or are disputed, one line for all cases of the same reason. */
function reasonsOf(results: readonly CaseResult[], disputed: ReadonlyMap<string, Dispute>): string[] {
  const ids = new Map<string, string[]>();
  for (const { id, verdict, reason } of results) {
    const dispute = verdict === 'disputed' ? disputed.get(id) : undefined;
    const why = dispute ? REPORT_WORDS.disputed(`${dispute.why} ${dispute.evidence}`) : reason && sentence(reason);
    if (why !== undefined) ids.set(why, [...(ids.get(why) ?? []), id]);
  }
  return [...ids].map(([why, all]) => wrapped('  ', `${all.join(', ')}: ${why}`));
}

function sentence({ code, facts }: { code: string; facts: Facts }): string {
  const known = DOMAIN_ERROR_CODES.find((one) => one === code);
  return known === undefined ? code : domainErrorSentence(known, facts);
}

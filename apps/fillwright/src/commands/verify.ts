import { readFileSync } from 'node:fs';
import { judgeCase, type CaseResult, type CheckCase } from '@fillwright/engine/catalogue';
import { findEntry } from '@fillwright/engine/register';
import { COMMAND_LINE, faultSentence, REPORT_WORDS, USAGE } from '@fillwright/words/en';
import { readArguments } from '../arguments.ts';
import { countsOf } from '../case-counts.ts';
import { disputes, goldenCases } from '../golden-cases.ts';
import { reportText } from '../report-text.ts';
import type { Streams } from '../streams.ts';

const MOST_FAULTS = 50;

/**
 * `fillwright verify [file.json]`: recomputes check cases and reports each verdict.
 *
 * @param args - a file, or nothing for the cases of the program, and flags
 * @param streams - where to write
 * @returns exit code: 0, 1 when a case fails or cannot be computed, 2 for wrong input, 3 when a file cannot be read
 */
export async function run(args: readonly string[], streams: Streams): Promise<number> {
  const { words, values, switches, problems } = readArguments(args, { group: 'list', json: 'switch' });
  if (switches.has('help')) {
    streams.out(USAGE.verify);
    return 0;
  }
  const wrong = [...problems, ...words.slice(1).map((word) => COMMAND_LINE.wordNotTaken(word))];
  const read = wrong.length > 0 ? { exitCode: 2, wrong } : await casesFrom(words[0]);
  const found = 'cases' in read ? inGroups(read.cases, values.get('group')) : read;
  if (!('cases' in found)) {
    for (const sentence of found.wrong) streams.problem(sentence);
    return found.exitCode;
  }
  const disputed = disputes();
  const results = found.cases.map((one) => judged(one, disputed));
  const { summary, groups } = countsOf(results);
  streams.out(
    switches.has('json')
      ? JSON.stringify({ summary, groups, cases: results }, null, 2)
      : reportText({ results, summary, groups, disputed }),
  );
  return summary.fail + summary.cannotTell === 0 ? 0 : 1;
}

type Cases =
  { readonly cases: readonly CheckCase[] } | { readonly exitCode: number; readonly wrong: readonly string[] };

async function casesFrom(path: string | undefined): Promise<Cases> {
  if (path === undefined) return { cases: goldenCases() };
  const text = contentOf(path);
  if (typeof text !== 'string') return { exitCode: 3, wrong: [COMMAND_LINE.unreadable(path, text.message)] };
  const { parseCheckCases } = await import('@fillwright/contract/check-cases');
  try {
    const parsed = parseCheckCases(JSON.parse(text));
    if (parsed.ok) return parsed;
    const more = parsed.faults.length - MOST_FAULTS;
    const told = parsed.faults.slice(0, MOST_FAULTS).map(faultSentence);
    return { exitCode: 2, wrong: more > 0 ? [...told, REPORT_WORDS.more(more)] : told };
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return { exitCode: 2, wrong: [COMMAND_LINE.notJson(path, error.message)] };
  }
}

function contentOf(path: string): string | Error {
  try {
    return readFileSync(path, 'utf8').replace(/^\uFEFF/, '');
  } catch (error) {
    if (error instanceof Error && 'syscall' in error) return error;
    throw error;
  }
}

function inGroups(cases: readonly CheckCase[], groups: readonly string[] | undefined): Cases {
  const known = [...new Set(cases.map(({ group }) => group))];
  const strangers = groups?.filter((group) => !known.includes(group)) ?? [];
  if (cases.length === 0) return { exitCode: 2, wrong: [REPORT_WORDS.noCase] };
  if (strangers.length > 0)
    return { exitCode: 2, wrong: strangers.map((group) => REPORT_WORDS.unknownGroup(group, known)) };
  return { cases: groups === undefined ? cases : cases.filter(({ group }) => groups.includes(group)) };
}

/** A case on the list of disputes is counted apart, whatever comes out. */
function judged(one: CheckCase, disputed: ReadonlyMap<string, unknown>): CaseResult {
  const result = judgeCase(one, findEntry);
  return disputed.has(one.id) ? { ...result, verdict: 'disputed' } : result;
}

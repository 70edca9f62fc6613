import { readFile } from 'node:fs/promises';
import { DomainError } from '@fillwright/engine/catalogue';
import { search, type Design } from '@fillwright/engine/design';
import { COMMAND_LINE, domainErrorSentence, formatFaults, documentNoticeSentence, USAGE } from '@fillwright/words/en';
import { readArguments } from '../arguments.ts';
import { designText } from '../design-text/design-text.ts';
import { refuse } from '../refuse.ts';
import type { Streams } from '../streams.ts';
import { readBrief, type BriefRead } from '@fillwright/contract/files';

const LARGEST_SEED = 4294967295;
const HIGHEST_RANK = 1000;

/**
 * `fillwright design <brief>`: ranked set-ups with the sheet, limit card and drawing of one of them.
 *
 * @param args - the brief's path and flags
 * @param streams - where to write
 * @returns exit code: 0, 1 when nothing in stock fills a sound brief, 2 for wrong input, 3 when a file cannot be read
 */
export async function run(args: readonly string[], streams: Streams): Promise<number> {
  const request = readRequest(args);
  if (request === 'help') {
    streams.out(USAGE.design);
    return 0;
  }
  if ('wrong' in request) return refuse(streams, ...request.wrong);
  const read = await readBrief({ path: request.path, readText: (file) => readFile(file, 'utf8') });
  if (!read.ok) {
    streams.problem(formatFaults(read.faults));
    return read.kind === 'file' ? 3 : 2;
  }
  const design = designed(read, request.seed);
  if (typeof design === 'string') return refuse(streams, design);
  const count = design.candidates.length;
  if (count > 0 && request.rank > count) return refuse(streams, COMMAND_LINE.rankTooHigh(request.rank, count));
  const notices = read.notices.map(documentNoticeSentence);
  streams.out(request.isJson ? await json(design) : designText({ ...request, brief: read.brief, design, notices }));
  return count > 0 ? 0 : 1;
}

interface Request {
  readonly path: string;
  readonly seed: number;
  readonly rank: number;
  readonly isJson: boolean;
  readonly isEachRejection: boolean;
}

function readRequest(args: readonly string[]): Request | { readonly wrong: readonly string[] } | 'help' {
  const flags = { json: 'switch', all: 'switch', seed: 'value', rank: 'value' } as const;
  const { words, values, switches, problems } = readArguments(args, flags);
  if (switches.has('help')) return 'help';
  const [path, ...others] = words;
  const seed = wholeNumber(values.get('seed')?.[0], { from: 0, to: LARGEST_SEED });
  const rank = wholeNumber(values.get('rank')?.[0], { from: 1, to: HIGHEST_RANK });
  const wrong = [
    ...problems,
    ...others.map((word) => COMMAND_LINE.wordNotTaken(word)),
    ...(path === undefined ? [COMMAND_LINE.briefMissing] : []),
    ...(Number.isNaN(seed) ? [COMMAND_LINE.notWhole('--seed', 0, LARGEST_SEED)] : []),
    ...(Number.isNaN(rank) ? [COMMAND_LINE.notWhole('--rank', 1, HIGHEST_RANK)] : []),
  ];
  if (path === undefined || wrong.length > 0) return { wrong };
  return { path, seed, rank, isJson: switches.has('json'), isEachRejection: switches.has('all') };
}

function designed({ brief, filler, shells }: Extract<BriefRead, { ok: true }>, seed: number): Design | string {
  try {
    return search({ brief, filler, shells, seed });
  } catch (error) {
    if (error instanceof DomainError) return domainErrorSentence(error.code, error.facts);
    throw error;
  }
}

async function json(design: Design): Promise<string> {
  const { checkedDesign } = await import('@fillwright/contract/design');
  return JSON.stringify(checkedDesign(design), null, 2);
}

/** The whole number a flag gives, 1 when it is not given, NaN when it is not one. */
function wholeNumber(text: string | undefined, range: { from: number; to: number }): number {
  if (text === undefined) return 1;
  const value = /^\d+$/.test(text) ? Number(text) : NaN;
  return value >= range.from && value <= range.to ? value : NaN;
}

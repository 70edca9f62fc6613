import type { Entry } from '@fillwright/engine/catalogue';
import { ENTRIES, findEntry } from '@fillwright/engine/register';
import { COMMAND_LINE, USAGE } from '@fillwright/words/en';
import { readArguments } from '../arguments.ts';
import { goldenCases } from '../golden-cases.ts';
import { columns } from '../layout.ts';
import { methodText } from '../method-text.ts';
import { nearestMethods } from '../nearest-methods.ts';
import { refuse } from '../refuse.ts';
import type { Streams } from '../streams.ts';

/**
 * `fillwright methods`: lists the methods that hold all the words, or shows the one whose id is given.
 *
 * @param args - words and flags
 * @param streams - where to write
 * @returns exit code: 0, or 2 when nothing matches
 */
export function run(args: readonly string[], streams: Streams): Promise<number> {
  return Promise.resolve(methods(args, streams));
}

function methods(args: readonly string[], streams: Streams): number {
  const { words, switches, problems } = readArguments(args, { json: 'switch' });
  if (switches.has('help')) return print(streams, USAGE.methods);
  if (problems.length > 0) return refuse(streams, ...problems);
  const isJson = switches.has('json');
  const entry = words.length === 1 ? findEntry(words[0] ?? '') : undefined;
  if (entry)
    return print(streams, isJson ? json({ ...entry, checkValues: casesOf(entry) }) : methodText(entry, casesOf(entry)));
  const found = ENTRIES.filter(({ id, title }) => words.every((word) => holds(`${id} ${title}`, word)));
  if (found.length === 0) return refuse(streams, notFound(words));
  const list = found.map(({ id, title }) => ({ id, title }));
  return print(streams, isJson ? json(list) : columns(list.map(({ id, title }) => [id, title])));
}

function holds(text: string, word: string): boolean {
  return text.toLowerCase().includes(word.toLowerCase());
}

function casesOf(entry: Entry): ReturnType<typeof goldenCases> {
  return goldenCases().filter(({ method }) => method === entry.id);
}

function notFound(words: readonly string[]): string {
  const nearest = words.length === 1 ? nearestMethods(words.join()) : [];
  return nearest.length === 0
    ? COMMAND_LINE.nothingFound(words.join(' '))
    : COMMAND_LINE.unknownMethod(words.join(), nearest);
}

/** The function of an entry is no JSON and stays out by itself. */
function json(value: unknown): string {
  return JSON.stringify(value, null, 2);
}

function print(streams: Streams, text: string): number {
  streams.out(text);
  return 0;
}

import { parseArgs } from 'node:util';
import { nearestName } from '@fillwright/engine/catalogue';
import { COMMAND_LINE } from '@fillwright/words/en';

/** Flags of a command by name without dashes: a switch stands alone, a value follows its flag, a list repeats the flag. */
export type FlagKinds = Readonly<Record<string, 'switch' | 'value' | 'list'>>;

/** A command line taken apart, with one sentence for each thing that is wrong with it. */
export interface Arguments {
  readonly switches: ReadonlySet<string>;
  readonly values: ReadonlyMap<string, readonly string[]>;
  readonly words: readonly string[];
  readonly problems: readonly string[];
}

/**
 * Takes the arguments of a command apart.
 *
 * @param args - what stands after the command's name
 * @param kinds - the flags it knows; `--help` is always known
 * @returns switches, texts by flag, other words, and all problems at once
 */
export function readArguments(args: readonly string[], kinds: FlagKinds): Arguments {
  const known: FlagKinds = { ...kinds, help: 'switch' };
  const options = Object.fromEntries(
    Object.entries(known).map(([name, kind]) => [name, { type: kind === 'switch' ? 'boolean' : 'string' } as const]),
  );
  const { tokens } = parseArgs({ args: [...args], options, allowPositionals: true, strict: false, tokens: true });
  const switches = new Set<string>();
  const values = new Map<string, string[]>();
  const words: string[] = [];
  const problems: string[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') words.push(token.value);
    if (token.kind !== 'option') continue;
    const problem = flagProblem(token, known, values);
    if (problem !== undefined) problems.push(problem);
    else if (token.value === undefined) switches.add(token.name);
    else values.set(token.name, [...(values.get(token.name) ?? []), token.value]);
  }
  return { switches, values, words, problems };
}

interface Flag {
  readonly name: string;
  readonly rawName: string;
  readonly value: string | undefined;
  readonly inlineValue: boolean | undefined;
}

function flagProblem(
  { name, rawName, value, inlineValue }: Flag,
  known: FlagKinds,
  given: ReadonlyMap<string, unknown>,
): string | undefined {
  const kind = Object.hasOwn(known, name) && rawName.startsWith('--') ? known[name] : undefined;
  if (kind === undefined) {
    const nearest = nearestName(name, Object.keys(known));
    const flags = Object.keys(known).map((flag) => `--${flag}`);
    return COMMAND_LINE.unknownFlag(rawName, nearest && `--${nearest}`, flags);
  }
  if (kind === 'switch') return value === undefined ? undefined : COMMAND_LINE.valueNotTaken(rawName);
  if (value === undefined || (!inlineValue && value.startsWith('--'))) return COMMAND_LINE.valueMissing(rawName);
  return kind === 'value' && given.has(name) ? COMMAND_LINE.givenTwice(rawName) : undefined;
}

import { computeEntry, DomainError, type Entry } from '@fillwright/engine/catalogue';
import { findEntry } from '@fillwright/engine/register';
import { COMMAND_LINE, domainErrorSentence, faultSentence, METHOD_WORDS, USAGE } from '@fillwright/words/en';
import { readArguments, type FlagKinds } from '../arguments.ts';
import { flagOf } from '../flag-of.ts';
import { nearestMethods } from '../nearest-methods.ts';
import { readInputs } from '../read-inputs.ts';
import { refuse } from '../refuse.ts';
import type { Streams } from '../streams.ts';
import { valueText } from '../value-text.ts';

/**
 * `fillwright compute <id> --flag value ...`: computes one method of the catalogue.
 *
 * @param args - id and flags
 * @param streams - where to write
 * @returns exit code: 0, 1 when an output is no number, 2 for wrong input
 */
export function run(args: readonly string[], streams: Streams): Promise<number> {
  return Promise.resolve(compute(args, streams));
}

function compute(args: readonly string[], streams: Streams): number {
  const id = args.find((arg) => findEntry(arg)) ?? args.find((arg) => !arg.startsWith('-'));
  const entry = id === undefined ? undefined : findEntry(id);
  if (args.includes('--help')) {
    streams.out(USAGE.compute);
    return 0;
  }
  if (id === undefined) return refuse(streams, COMMAND_LINE.methodMissing);
  if (!entry) return refuse(streams, COMMAND_LINE.unknownMethod(id, nearestMethods(id)));
  const { values, words, switches, problems } = readArguments(args, flagsOf(entry));
  const { inputs, faults } = readInputs(entry, values);
  const strays = words.filter((word) => word !== id).map((word) => COMMAND_LINE.wordNotTaken(word));
  // After an unknown flag its value is left over: no second complaint about it.
  const wrong = [...(problems.length > 0 ? problems : strays), ...faults.map(faultSentence)];
  return wrong.length > 0
    ? refuse(streams, ...wrong)
    : printed({ entry, inputs, isJson: switches.has('json') }, streams);
}

interface Task {
  readonly entry: Entry;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly isJson: boolean;
}

function printed({ entry, inputs, isJson }: Task, streams: Streams): number {
  try {
    const computed = computeEntry(entry, inputs);
    const outputs = computed.ok ? computed.outputs : {};
    streams.out(isJson ? json({ entry, inputs, outputs }) : text(entry, outputs));
    const values = Object.values(outputs).flat();
    return computed.ok && values.every((value) => typeof value !== 'number' || Number.isFinite(value)) ? 0 : 1;
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return refuse(streams, domainErrorSentence(error.code, error.facts));
  }
}

function flagsOf(entry: Entry): FlagKinds {
  return {
    ...Object.fromEntries(entry.inputs.map((field) => [flagOf(field.key), field.list ? 'list' : 'value'])),
    json: 'switch',
  };
}

function text(entry: Entry, outputs: Readonly<Record<string, unknown>>): string {
  const width = Math.max(...entry.outputs.map(({ key }) => key.length), METHOD_WORDS.validity.length);
  const unit = (field: Entry['outputs'][number]): string => ('unit' in field ? field.unit : '1');
  return [
    ...entry.outputs.map((field) => `${field.key.padEnd(width)}  ${valueText(outputs[field.key], unit(field))}`),
    ...entry.sources.map((source) => `${METHOD_WORDS.source.padEnd(width)}  ${source.text} (${source.read})`),
    `${METHOD_WORDS.validity.padEnd(width)}  ${entry.validity}`,
  ].join('\n');
}

function json({ entry, inputs, outputs }: { entry: Entry; inputs: object; outputs: object }): string {
  const { id, sources, validity, restsOn } = entry;
  return JSON.stringify({ method: id, inputs, outputs, sources, validity, restsOn }, null, 2);
}

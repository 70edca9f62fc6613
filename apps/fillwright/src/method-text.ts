import { allowedRange, type CheckCase, type Entry, type Field } from '@fillwright/engine/catalogue';
import { METHOD_WORDS } from '@fillwright/words/en';
import { equationText } from './equation-text.ts';
import { flagOf } from './flag-of.ts';
import { columns, wrapped } from './layout.ts';
import { toleranceText } from './tolerance-text.ts';
import { valueText } from './value-text.ts';

/**
 * Everything about one method, for the terminal.
 *
 * @param entry - the catalogue entry
 * @param cases - its check values
 * @returns lines
 */
export function methodText(entry: Entry, cases: readonly CheckCase[]): string {
  const word = METHOD_WORDS;
  const [first] = cases;
  return [
    entry.id,
    entry.title,
    '',
    wrapped(label(word.equation), equationText(entry.equation)),
    word.inputs,
    columns(
      entry.inputs.map((field) => [`--${flagOf(field.key)}`, ...described(field, false)]),
      '  ',
    ),
    word.outputs,
    columns(
      entry.outputs.map((field) => [field.key, ...described(field, true)]),
      '  ',
    ),
    ...entry.sources.map(({ text, read }) => wrapped(label(word.source), `${text} (${read})`)),
    wrapped(label(word.validity), entry.validity),
    wrapped(label(word.restsOn), entry.restsOn),
    ...(first
      ? [word.checkValues, ...cases.map(caseText), wrapped(label(word.example), commandOf(first))]
      : [`${label(word.checkValues)}${word.noCheckValues}`]),
  ].join('\n');
}

function label(word: string): string {
  return word.padEnd(14);
}

/** Title, then what is allowed or, of an output, in which unit it comes. */
function described(field: Field, isOutput: boolean): string[] {
  const notes = [
    isOutput && 'unit' in field ? METHOD_WORDS.in(field.unit) : allowed(field),
    ...(field.list ? [METHOD_WORDS.listOf(field.list.min, field.list.max)] : []),
    ...(field.optional ? [isOutput ? METHOD_WORDS.mayBeAbsent : METHOD_WORDS.optional] : []),
  ];
  return [field.title, notes.join('; ')];
}

function allowed(field: Field): string {
  if (field.kind === 'number' || field.kind === 'integer') return allowedRange(field);
  if (field.kind === 'choice') return field.choices.join(' | ');
  return METHOD_WORDS.kinds[field.kind];
}

function caseText({ id, expected, tolerance, source }: CheckCase): string {
  return wrapped(`  ${id}  `, `${valueText(expected)} (${toleranceText(tolerance)}): ${source}`);
}

/** The command line that computes a check case. */
function commandOf({ method, inputs }: CheckCase): string {
  const flags = Object.entries(inputs).flatMap(([key, value]) =>
    [value].flat().map((item) => {
      const text = String(item);
      return `--${flagOf(key)} ${/^[\w.+-]+$/.test(text) ? text : `"${text}"`}`;
    }),
  );
  return ['fillwright compute', method, ...flags].join(' ');
}

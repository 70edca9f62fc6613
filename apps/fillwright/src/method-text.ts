import { allowedRange, type CheckCase, type Entry, type Field } from '@fillwright/engine/catalogue';
import { METHOD_WORDS } from '@fillwright/words/en';
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
    wrapped(label(word.equation), entry.equation),
    word.inputs,
    columns(
      entry.inputs.map((field) => [`--${flagOf(field.key)}`, ...described(field)]),
      '  ',
    ),
    word.outputs,
    columns(
      entry.outputs.map((field) => [field.key, ...described(field)]),
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

/** Title, then what is allowed. */
function described(field: Field): string[] {
  const isNumber = field.kind === 'number' || field.kind === 'integer';
  const allowed = isNumber ? allowedRange(field) : field.kind === 'choice' ? field.choices.join(' | ') : field.kind;
  const notes = [
    allowed,
    ...(field.list ? [METHOD_WORDS.listOf(field.list.min, field.list.max)] : []),
    ...(field.optional ? [METHOD_WORDS.optional] : []),
  ];
  return [field.title, notes.join('; ')];
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

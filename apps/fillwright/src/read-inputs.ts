import { checkValues, type Entry, type Field, type InputFault } from '@fillwright/engine/catalogue';
import { flagOf } from './flag-of.ts';

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/**
 * Turns the texts behind flags into the inputs of a method and checks all of them.
 *
 * @param entry - the method
 * @param texts - texts by flag
 * @returns the inputs by key, and everything that is wrong with them, under the names of the flags
 */
export function readInputs(
  entry: Entry,
  texts: ReadonlyMap<string, readonly string[]>,
): { readonly inputs: Readonly<Record<string, unknown>>; readonly faults: readonly InputFault[] } {
  const given = entry.inputs.flatMap((field) => {
    const list = texts.get(flagOf(field.key));
    if (list === undefined) return [];
    const values = list.flatMap((text) => spread(field, readText(field, text)));
    return [{ field, list, value: field.list ? values : values[0] }];
  });
  const inputs = Object.fromEntries(given.map(({ field, value }) => [field.key, value]));
  const marks = given.flatMap(({ field, list }) => list.flatMap((text) => markFault(field, text)));
  const others = checkValues(entry.inputs, inputs).map((fault) => ({ ...fault, field: flagIn(fault.field) }));
  const isToldAlready = (fault: InputFault): boolean => marks.some(({ value }) => value === fault.value);
  return { inputs, faults: [...marks, ...others.filter((fault) => !isToldAlready(fault))] };
}

/** A text that does not read as its kind stays a text, so that the check refuses it. */
function readText(field: Field, text: string): unknown {
  switch (field.kind) {
    case 'number':
    case 'integer':
      return NUMBER.test(text) ? Number(text) : text;
    case 'flag':
      return text === 'true' ? true : text === 'false' ? false : text;
    case 'group':
      return readGroup(text);
    default:
      return text;
  }
}

/** A group, or a whole list of groups, is written as JSON: `{"levels_ratio":[-1,1]}`. */
function readGroup(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return text;
  }
}

/** One flag may hold all groups of a list. */
function spread(field: Field, value: unknown): readonly unknown[] {
  return field.kind === 'group' && Array.isArray(value) ? value : [value];
}

/** Digits with a decimal comma or with marks for thousands: told by name, since they look right to whoever wrote them. */
function markFault(field: Field, value: string): InputFault[] {
  if ((field.kind !== 'number' && field.kind !== 'integer') || NUMBER.test(value)) return [];
  if (!/^[+-]?\d*[.,' \u00A0\u202F][\d.,' \u00A0\u202F]*$/.test(value)) return [];
  const code = /^[+-]?\d*,\d+$/.test(value) ? 'decimal-comma' : 'thousands-mark';
  return [{ code, field: `--${flagOf(field.key)}`, value }];
}

/** `forces_N.2` -> `--forces_N (value 3)`. */
function flagIn(path: string): string {
  const [key = '', index] = path.split('.');
  return `--${flagOf(key)}${index === undefined ? '' : ` (value ${Number(index) + 1})`}`;
}

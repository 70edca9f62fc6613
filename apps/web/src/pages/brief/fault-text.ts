import type { ValuePath } from '@fillwright/contract/files';
import type { InputFault } from '@fillwright/engine/catalogue';
import { BRIEF_PAGE_WORDS, documentFaultSentence, FILE_WORDS } from '@fillwright/words/en';
import { fieldKind, pathOf } from './field-path.ts';

/** Faults of a key itself: the key has to be seen as it stands in the text. */
const OF_THE_KEY: readonly InputFault['code'][] = [
  'unknown-field',
  'unit-missing',
  'unit-wrong',
  'duplicate-key',
  'syntax',
];

/**
 * What is wrong, as one sentence that calls the field what the form calls it.
 *
 * @param fault - the fault
 * @returns one sentence
 */
export function faultText(fault: InputFault): string {
  if (OF_THE_KEY.includes(fault.code)) return documentFaultSentence(fault);
  const field = nameOf(pathOf(fault.field));
  if (fault.code === 'file') return FILE_WORDS.missing(field, String(fault.value));
  return documentFaultSentence({ ...fault, field });
}

/** @returns what the form calls a value: `Label claim (substance 2)` */
export function nameOf(path: ValuePath): string {
  const item = itemOf(path);
  const name = labelOf(path);
  return item === undefined || name === item ? name : `${name} (${item})`;
}

/** Label of the value itself; of a part of a quantity that of the quantity with the part behind it. */
function labelOf(path: ValuePath): string {
  const fields: Readonly<Record<string, { readonly label: string } | undefined>> = BRIEF_PAGE_WORDS.fields;
  const last = path.at(-1);
  const own = typeof last === 'number' ? itemOf(path) : fields[fieldKind(path)]?.label;
  if (own !== undefined) return own;
  if (typeof last === 'number') return labelOf(path.slice(0, -1));
  return path.length < 2 ? path.join('.') : `${labelOf(path.slice(0, -1))}, ${String(last)}`;
}

const ITEMS: Readonly<Record<string, (n: number) => string>> = {
  cautions: BRIEF_PAGE_WORDS.caution,
  'parts.target.substances': BRIEF_PAGE_WORDS.substance,
  shells: BRIEF_PAGE_WORDS.shell,
  route: BRIEF_PAGE_WORDS.test,
};

/** The item of a list that a value belongs to. */
function itemOf(path: ValuePath): string | undefined {
  for (const [depth, step] of path.entries()) {
    const name = ITEMS[fieldKind(path.slice(0, depth))];
    if (typeof step === 'number' && name) return name(step + 1);
  }
  return undefined;
}

import type { SourceDocument } from '#faults';
import type { InputFault } from '@fillwright/engine/catalogue';
import { isMap, LineCounter, parseDocument, type Document } from 'yaml';
import { fieldOffset, nodeAt, sourceOf } from './yaml-places.ts';
import { keyFaults } from './yaml-key-faults.ts';

/** Where something stands in a text, counted from 1. */
interface Place {
  readonly line: number;
  readonly column: number;
}

/** A YAML text, read as far as it can be read. */
export interface YamlText extends SourceDocument {
  /** What is wrong with the text itself. */
  readonly faults: readonly (InputFault & Place)[];
  /** Whether `value` can be judged: not after an error that leaves open what was meant. */
  readonly isReadable: boolean;
  /** Place of a field, or of the nearest one around it that stands in the text. */
  readonly placeOf: (field: string) => Place;
}

const LONGEST_TEXT = 500_000;
const MOST_ALIASES = 50;
const START: Place = { line: 1, column: 1 };

/**
 * Reads a text of the YAML 1.2 core schema: no merge keys, no tags, one document, a mapping at the top.
 *
 * @param text - the text
 * @returns its value, what is wrong with the text itself, and where its fields stand; never throws
 */
export function yamlText(text: string): YamlText {
  if (text.length > LONGEST_TEXT) return unreadable('text-too-long', { characters: text.length, most: LONGEST_TEXT });
  try {
    return read(text);
  } catch (error) {
    if (error instanceof RangeError) return unreadable('nested-too-deep');
    throw error;
  }
}

function read(text: string): YamlText {
  const counter = new LineCounter();
  const document = parseDocument(text, {
    ...{ version: '1.2', schema: 'core', merge: false, uniqueKeys: false },
    ...{ prettyErrors: false, logLevel: 'error', lineCounter: counter },
  });
  const placeAt = (offset: number): Place => {
    const { line, col } = counter.linePos(offset);
    return { line: Math.max(1, line), column: Math.max(1, col) };
  };
  // One slip often makes several errors in its line: the first says enough.
  const problems = [...document.errors, ...document.warnings]
    .map(({ code, pos }) => ({ code, ...placeAt(pos[0]) }))
    .filter(({ line }, index, all) => all.findIndex((other) => other.line === line) === index);
  const faults: (InputFault & Place)[] = problems.map(({ code, ...place }) => ({
    ...syntax(code.toLowerCase().replaceAll('_', '-')),
    ...place,
  }));
  const isIntact = problems.length === 0;
  if (isIntact && document.contents === null) faults.push({ ...syntax('empty-text'), ...START });
  else if (isIntact && !isMap(document.contents)) faults.push({ ...syntax('not-a-mapping'), ...START });
  for (const { offset, firstOffset, ...fault } of keyFaults(document)) {
    faults.push({ ...fault, facts: { firstLine: placeAt(firstOffset).line }, ...placeAt(offset) });
  }
  const value = valueOf(document);
  if (!value.ok) faults.push({ ...syntax(value.rule), ...START });
  return {
    value: value.ok ? value.value : undefined,
    faults,
    isReadable: isIntact && value.ok && isMap(document.contents),
    textAt: (path) => sourceOf(nodeAt(document, path.map(String).join('.'))),
    placeOf: (field) => placeAt(fieldOffset(document, field)),
  };
}

type Value = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly rule: string };

function valueOf(document: Document): Value {
  try {
    return { ok: true, value: document.toJS({ maxAliasCount: MOST_ALIASES }) };
  } catch (error) {
    if (!(error instanceof ReferenceError)) throw error;
    return { ok: false, rule: error.message.startsWith('Excessive') ? 'too-many-aliases' : 'unknown-alias' };
  }
}

function syntax(rule: string, facts?: Readonly<Record<string, number>>): InputFault {
  return { code: 'syntax', field: '', rule, ...(facts ? { facts } : {}) };
}

function unreadable(rule: string, facts?: Readonly<Record<string, number>>): YamlText {
  const faults = [{ ...syntax(rule, facts), ...START }];
  return { value: undefined, faults, isReadable: false, placeOf: () => START };
}

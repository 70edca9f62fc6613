import { describe, expect, test } from 'vitest';
import type { Field, NumberField } from '#catalogue';
import { ENTRIES, findEntry } from './find-entry.ts';
import { ROOMS } from './rooms.ts';

/** The unit as printed that a key's suffix stands for: `_g_per_mL` is `g/mL`; a key without suffix is a count. */
function unitOf(key: string): string {
  const [, ...words] = key.split('_');
  const suffix = words.join('_');
  if (suffix === '' || suffix === 'frac' || suffix === 'ratio') return '1';
  if (/^pct\d?$/.test(suffix)) return suffix.replace('pct', '%');
  const [over, ...under] = suffix.replace(/^per_/, '1_per_').split('_per_');
  return [over, ...under].join('/');
}

function deep(fields: readonly Field[]): Field[] {
  return fields.flatMap((field) => [field, ...(field.kind === 'group' ? deep(field.fields) : [])]);
}

const FIELDS = ENTRIES.flatMap(({ id, inputs, outputs }) =>
  [...deep(inputs), ...deep(outputs)].map((field) => ({ name: `${id} ${field.key}`, field })),
);

/** Unit as the key says, at most one bound on either side, the lower one below the upper one. */
function checkNumber({ key, unit, min, above, max, below }: NumberField): void {
  expect(unit).toBe(unitOf(key));
  expect(min === undefined || above === undefined).toBe(true);
  expect(max === undefined || below === undefined).toBe(true);
  for (const bound of [min, above, max, below]) expect(bound === undefined || Number.isFinite(bound)).toBe(true);
  expect(min ?? above ?? -Infinity).toBeLessThan(max ?? below ?? Infinity);
}

describe('ROOMS', () => {
  test.each(Object.entries(ROOMS))('property: every id of %s starts with the name of its room', (room, entries) => {
    expect(entries.length).toBeGreaterThan(0);
    for (const { id } of entries) expect(id).toMatch(new RegExp(`^${room}\\.[a-z0-9]+(-[a-z0-9]+)*$`));
  });
});

describe('ENTRIES', () => {
  test('property: ids and titles are unique', () => {
    for (const list of [ENTRIES.map(({ id }) => id), ENTRIES.map(({ title }) => title)])
      expect(list.filter((item, i) => list.indexOf(item) !== i)).toEqual([]);
  });
  test.each(ENTRIES)('property: $id says equation, source, validity and what it rests on', (entry) => {
    for (const text of [entry.title, entry.equation, entry.validity, entry.restsOn]) expect(text.trim()).not.toBe('');
    expect(entry.sources.length).toBeGreaterThan(0);
    for (const { text } of entry.sources) expect(text.trim()).not.toBe('');
    expect(entry.inputs.length).toBeGreaterThan(0);
    expect(entry.outputs.length).toBeGreaterThan(0);
    for (const fields of [entry.inputs, entry.outputs])
      expect(new Set(fields.map(({ key }) => key)).size).toBe(fields.length);
  });
  test.each(FIELDS)('property: $name has a title and a key in camel case with a unit suffix', ({ field }) => {
    expect(field.key).toMatch(/^[a-z][a-zA-Z0-9]*(_[a-zA-Z0-9]+)*$/);
    expect(field.title.trim()).not.toBe('');
  });
  test.each(FIELDS)('property: $name has the unit, range, choices and length that its kind asks for', ({ field }) => {
    if (field.list) expect(field.list.min).toBeLessThanOrEqual(field.list.max);
    if (field.kind === 'number' || field.kind === 'integer') checkNumber(field);
    if (field.kind === 'choice') {
      expect(field.choices.length).toBeGreaterThan(0);
      expect(new Set(field.choices).size).toBe(field.choices.length);
    }
    if (field.kind === 'group') expect(field.fields.length).toBeGreaterThan(0);
  });
});

describe('findEntry', () => {
  test('golden: finds by id', () => {
    expect(findEntry('quantity.kilogram-force')?.id).toBe('quantity.kilogram-force');
  });
  test.each(['', 'quantity', 'toString', '__proto__', 'Quantity.kilogram-force'])('refuses: "%s" is no id', (id) => {
    expect(findEntry(id)).toBeUndefined();
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { computeEntry, DomainError, type CheckCase } from '#catalogue';
import { entries } from './index.ts';

/** One case of each method from the golden files, to be spoilt number by number. */
const folder = new URL('../../golden/', import.meta.url);
const cases = readdirSync(folder)
  .filter((name) => name !== 'disputed.json')
  .flatMap((name) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as CheckCase[]);
const METHODS = entries.flatMap((entry) => {
  const own = cases.filter(({ method }) => method === entry.id);
  // The shortest case: what is spoilt is the same in a long one.
  const [first] = own.sort((a, b) => JSON.stringify(a.inputs).length - JSON.stringify(b.inputs).length);
  return first ? [{ id: entry.id, entry, inputs: first.inputs }] : [];
});
/** Their lists may be empty: no generators make a full factorial, no runs to leave out. */
const MAY_BE_EMPTY = ['statistics.fractional-factorial'];

type Path = readonly (string | number)[];

function paths(value: unknown, wanted: (value: unknown) => boolean, path: Path = []): Path[] {
  const own = wanted(value) ? [path] : [];
  if (typeof value !== 'object' || value === null) return own;
  const inner = Object.entries(value).filter((_, i) => i < 3);
  return [...own, ...inner.flatMap(([key, one]) => paths(one, wanted, [...path, key]))];
}

function spoilt(value: unknown, [key, ...rest]: Path, by: unknown): unknown {
  if (key === undefined) return by;
  if (Array.isArray(value)) return value.map((one: unknown, i) => (i === Number(key) ? spoilt(one, rest, by) : one));
  const record = value as Record<string, unknown>;
  return { ...record, [key]: spoilt(record[key], rest, by) };
}

function outcome(entry: (typeof METHODS)[number]['entry'], inputs: unknown): unknown {
  try {
    const found = computeEntry(entry, inputs as Record<string, unknown>);
    return found.ok ? found.outputs : 'refused';
  } catch (error) {
    if (error instanceof DomainError) return 'refused';
    throw error;
  }
}

const isCannotTell = (found: unknown): boolean => (found as Record<string, unknown>)['verdict'] === 'cannot-tell';
const holdsNaN = (value: unknown): boolean =>
  typeof value === 'number'
    ? Number.isNaN(value)
    : typeof value === 'object' && value !== null && Object.values(value).some(holdsNaN);

describe('bad input to every method that has a check case', () => {
  test('limit: all areas are here', () => {
    expect(METHODS.length).toBeGreaterThan(100);
  });
  test.each(METHODS)('refuses: NaN and infinities anywhere in $id', ({ entry, inputs }) => {
    for (const path of paths(inputs, (value) => typeof value === 'number'))
      for (const bad of [NaN, Infinity, -Infinity])
        expect([path.join('.'), outcome(entry, spoilt(inputs, path, bad))]).toEqual([path.join('.'), 'refused']);
  });
  test.each(METHODS)('refuses: an empty list in $id, or it cannot tell', ({ id, entry, inputs }) => {
    for (const path of paths(inputs, Array.isArray)) {
      const found = outcome(entry, spoilt(inputs, path, []));
      if (!MAY_BE_EMPTY.includes(id))
        expect([path.join('.'), found === 'refused' || isCannotTell(found)]).toEqual([path.join('.'), true]);
    }
  });
  test.each(METHODS)('refuses: values so large that $id would answer with no number', ({ entry, inputs }) => {
    for (const path of paths(inputs, (value) => typeof value === 'number'))
      for (const bad of [1e300, -1e300]) expect(holdsNaN(outcome(entry, spoilt(inputs, path, bad)))).toBe(false);
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { computeEntry, type CheckCase } from '#catalogue';
import { entries } from './index.ts';

const folder = new URL('../../golden/', import.meta.url);
const cases = readdirSync(folder)
  .filter((name) => name !== 'disputed.json')
  .flatMap((name) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as CheckCase[]);

/** Methods whose values carry no order, with the power of the unit in outputs of each suffix. */
const WITHOUT_ORDER = [
  'statistics.sample-summary',
  'statistics.shapiro-wilk',
  'statistics.one-sample-t',
  'statistics.two-sample-t',
  'statistics.variance-ratio',
  'statistics.tukey-comparisons',
  'statistics.tolerance-interval',
  'statistics.one-way-anova',
  'statistics.one-way-components',
  'statistics.nested-components',
  'statistics.crossed-components',
  'statistics.mean-and-range-limits',
  'statistics.mean-and-sd-limits',
  'statistics.capability-from-subgroups',
  'statistics.net-variance-from-samples',
  'statistics.crossed-gauge',
];
const OF_UNITS = [
  ...WITHOUT_ORDER,
  'statistics.individuals-limits',
  'statistics.paired-t',
  'statistics.capability-indices',
  'statistics.gross-misclassification',
  'statistics.net-given-gross',
  'statistics.net-variance-from-pairs',
  'statistics.guarded-acceptance',
  'statistics.sorting-by-gross',
  'statistics.gross-check',
  'statistics.position-effects',
];
const UNIT = 0.001953125;

type Values = Readonly<Record<string, unknown>>;

/** Every list of numbers backwards, but for lists of levels and limits. */
function backwards(value: unknown, key = ''): unknown {
  if (Array.isArray(value))
    return value.every((one) => typeof one === 'number')
      ? key.endsWith('_data') && !key.startsWith('expected')
        ? [...value].reverse()
        : value
      : value.map((one) => backwards(one, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, backwards(one, name)]));
}

/** Values in another unit: `_data` times the factor, `_data2` times its square. */
function inUnit(value: unknown, key = ''): unknown {
  if (typeof value === 'number')
    return key.endsWith('_data2') ? value * UNIT * UNIT : key.endsWith('_data') ? value * UNIT : value;
  if (Array.isArray(value)) return value.map((one) => inUnit(one, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, inUnit(one, name)]));
}

function alike(found: unknown, expected: unknown, where: string): void {
  if (typeof expected === 'number') {
    expect([where, Math.abs((found as number) - expected) <= 1e-7 * Math.abs(expected) + 1e-9]).toEqual([where, true]);
    return;
  }
  if (typeof expected !== 'object' || expected === null) {
    expect([where, found]).toEqual([where, expected]);
    return;
  }
  expect(Object.keys(found as object)).toEqual(Object.keys(expected));
  for (const [key, one] of Object.entries(expected)) alike((found as Values)[key], one, `${where}.${key}`);
}

function computed(method: string, inputs: unknown): Values {
  const found = computeEntry(
    entries.find(({ id }) => id === method)!,
    inputs as Values,
  );
  if (!found.ok) throw new Error(JSON.stringify(found.faults));
  return found.outputs;
}

const casesOf = (method: string): CheckCase[] => cases.filter((one) => one.method === method).slice(0, 3);

describe('statistics', () => {
  test.each(WITHOUT_ORDER)('property: %s does not depend on the order of the values', (method) => {
    expect(casesOf(method).length).toBeGreaterThan(0);
    for (const { id, inputs } of casesOf(method))
      alike(computed(method, backwards(inputs)), computed(method, inputs), id);
  });
  test.each(OF_UNITS)('property: %s does not depend on the unit of the values', (method) => {
    expect(casesOf(method).length).toBeGreaterThan(0);
    for (const { id, inputs } of casesOf(method)) {
      const { criterion_ratio: _one, ...found } = computed(method, inUnit(inputs));
      // The likelihood is a density: its size depends on the unit.
      const { criterion_ratio: _two, ...expected } = computed(method, inputs);
      alike(found, inUnit(expected), id);
    }
  });
});

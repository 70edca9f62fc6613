import { describe, expect, test } from 'vitest';
import type { CheckCase } from './check-case.ts';
import { DomainError } from './domain-error.ts';
import { defineEntry, type Entry } from './entry.ts';
import { judgeCase } from './judge-case.ts';

const NUMBER = { kind: 'number', unit: '1' } as const;
const ENTRY: Entry = defineEntry({
  id: 'test.both',
  title: 'double and grade',
  equation: 'y = 2x',
  inputs: [{ key: 'x_ratio', title: 'x', ...NUMBER }],
  outputs: [
    { key: 'y_ratio', title: 'y', ...NUMBER },
    { key: 'list_ratio', title: 'list', ...NUMBER, list: { min: 0, max: 3 } },
    { key: 'upper_ratio', title: 'upper end', ...NUMBER, optional: true },
  ],
  sources: [],
  validity: '',
  restsOn: '',
  compute: ({ x_ratio }) => {
    if (x_ratio < 0) throw new DomainError('out-of-range', { x_ratio });
    return { y_ratio: x_ratio === 99 ? NaN : 2 * x_ratio, list_ratio: [x_ratio, 2 * x_ratio] };
  },
});
const judge = (change: Partial<CheckCase>) =>
  judgeCase(
    {
      ...{ id: 'a', group: 'g', method: 'test.both', inputs: { x_ratio: 2 }, expected: { y_ratio: 4 } },
      ...{ tolerance: { abs: 0 }, source: 'arithmetic', ...change },
    },
    (id) => (id === ENTRY.id ? ENTRY : undefined),
  );

describe('judgeCase', () => {
  test.each([
    [{}, 'pass', 0],
    [{ expected: { y_ratio: 4.1 }, tolerance: { abs: 0.2 } }, 'pass', 0.1],
    [{ expected: { y_ratio: 4.1 }, tolerance: { rel: 0.01 } }, 'fail', 0.1],
    [{ expected: { list_ratio: [2, 4] } }, 'pass', 0],
    [{ expected: { list_ratio: [2, 4.5] }, tolerance: { abs: 0.1, fields: { list_ratio: { abs: 1 } } } }, 'pass', 0.5],
    [{ expected: { list_ratio: [2] } }, 'fail', null],
    [{ expected: { y_ratio: '4' } }, 'fail', null],
    [{ expected: { upper_ratio: null } }, 'pass', null],
    [{ expected: {} }, 'fail', null],
    [{ expected: { y_ratio: Infinity }, tolerance: { rel: 1 } }, 'fail', null],
    [{ inputs: { x_ratio: 99 }, tolerance: { abs: 1e9 } }, 'fail', null],
  ] as const)('golden: %o -> %s (by hand)', (change, verdict, deviation) => {
    const result = judge(change);
    expect(result.verdict).toBe(verdict);
    if (deviation === null) expect(result.deviation).toBeNull();
    else expect(result.deviation).toBeCloseTo(deviation, 12);
  });
  test.each([
    [{ method: 'test.other' }, 'unknown-method'],
    [{ inputs: {} }, 'invalid-input'],
    [{ inputs: { x_ratio: -1 } }, 'out-of-range'],
    [{ expected: { z_ratio: null } }, 'invalid-input'],
  ])('refuses: %o cannot be told, never pass (%s)', (change, code) => {
    expect(judge(change)).toMatchObject({ verdict: 'cannot-tell', reason: { code } });
  });
});

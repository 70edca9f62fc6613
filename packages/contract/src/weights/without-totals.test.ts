import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readWeights } from './read-weights.ts';

const struckLines = (text: string): number[] =>
  readWeights({ text, unit: 'mg' }).lines.flatMap((line) => (line.kind === 'struck' ? [line.line] : []));

// Sums and means by hand.
describe('withoutTotals', () => {
  test('golden: 527.9 + 528.0 = 1055.9 below them is their total', () => {
    expect(struckLines('527.9\n528.0\n1055.9')).toEqual([3]);
  });
  test('golden: a mean right below the total is struck with it, the same value above it is not', () => {
    expect(struckLines('528.0\n527.0\n529.0\n1584.0\n528.0')).toEqual([4, 5]);
  });
  test('golden: a total in a column under headings, of capsules or of shells', () => {
    expect(struckLines('no;gross mg;shell mg\n1;527.9;97.0\n2;528.0;98.0\n;1055.9;195.0')).toEqual([1, 4]);
  });
  test('golden: a sheet that rounds what it shows is some tenths off: 3 x 430.04 = 1290.1', () => {
    expect(struckLines('430.0\n430.1\n430.0\n1290.2')).toEqual([4]);
  });
  test('property: weights of one product are never taken for a total', () => {
    const weights = fc.array(fc.integer({ min: 4000, max: 5500 }), { minLength: 2, maxLength: 200 });
    fc.assert(
      fc.property(weights, (tenths) => {
        expect(struckLines(tenths.map((tenth) => (tenth / 10).toFixed(1)).join('\n'))).toEqual([]);
      }),
      { seed: 1 },
    );
  });
});

import { describe, expect, test } from 'vitest';
import { numberOfEdge } from './number-of-edge.ts';

const EDGES = { low_mg: 380, high_mg: 475, meanLow_mg: 417.1, meanHigh_mg: 442.9 };

// Expected by hand.
describe('numberOfEdge', () => {
  test.each([
    [380, 'net', 'first-net-low'],
    [475, 'gross', 'first-gross-high'],
    [417.1, 'net', 'limit-mean-low'],
    [442.9, 'gross', 'gross-mean-high'],
    [430, 'net', undefined],
    [NaN, 'net', undefined],
  ] as const)('golden: %s mg, %s, opens %s', (edge_mg, kind, number) => {
    expect(numberOfEdge(EDGES, { edge_mg, kind, hasCard: true })).toBe(number);
  });
  test('limit: without a card a limit opens nothing, the forecast does', () => {
    expect(numberOfEdge(EDGES, { edge_mg: 417.1, kind: 'net', hasCard: false })).toBeUndefined();
    expect(numberOfEdge(EDGES, { edge_mg: 380, kind: 'net', hasCard: false })).toBe('first-net-low');
  });
});

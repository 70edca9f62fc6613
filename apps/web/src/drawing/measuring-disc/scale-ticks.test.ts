import { describe, expect, test } from 'vitest';
import { scaleText } from './scale-text.ts';
import { scaleTicks } from './scale-ticks.ts';

const scale = {
  ...{ station: 1, zeroReading_division: 18.1, deeperIs: 1 as const, pitch_mm_per_division: 1 },
  ...{ step_division: 0.1, backlash_division: 0.1 },
} as const;
const machine = { min_mm: 0, max_mm: 3 };
const axis = { machineRange: machine, referredTo: 'disc-top', scales: [scale] } as const;

// Expected by hand: from 18.1 to 21.1 the marks stand at every half, the numbers at every whole division.
describe('scaleTicks', () => {
  test('golden: marks at halves, numbers at wholes, at their depths', () => {
    const ticks = scaleTicks({ machine, mounted: { axis, scale, discHeight_mm: 15.5 } });
    expect(ticks.map(({ reading_division }) => reading_division)).toEqual([18.5, 19, 19.5, 20, 20.5, 21]);
    expect(ticks.filter(({ isNumbered }) => isNumbered).map(({ reading_division }) => reading_division)).toEqual([
      19, 20, 21,
    ]);
    expect(ticks[1]?.depth_mm).toBeCloseTo(0.9, 9);
  });
  test('limit: a fine scale has fewer numbers, so that they can be read', () => {
    const fine = { ...scale, zeroReading_division: 0, pitch_mm_per_division: 0.1 };
    const ticks = scaleTicks({ machine, mounted: { axis, scale: fine, discHeight_mm: 15.5 } });
    expect(ticks.filter(({ isNumbered }) => isNumbered).map(({ reading_division }) => reading_division)).toEqual([
      0, 10, 20, 30,
    ]);
  });
  test('limit: no round reading in the range, no marks', () => {
    const none = { min_mm: 1, max_mm: 1.2 };
    expect(scaleTicks({ machine: none, mounted: { axis, scale, discHeight_mm: 15.5 } })).toEqual([]);
  });
});

describe('scaleText', () => {
  test.each([
    [21.5, 0.1, '21.5'],
    [21.500000000000004, 0.1, '21.5'],
    [18, 0.1, '18.0'],
    [21.53, 0.1, '21.53'],
    [7, 1, '7'],
    [7.25, 0.25, '7.25'],
    [21.25, 0.05, '21.25'],
    [380, 1, '380'],
    [-0.5, 0.1, '\u22120.5'],
    [NaN, 0.1, 'cannot tell'],
  ])('golden: %s on a scale of steps %s is %s', (reading, step, text) => {
    expect(scaleText(reading, step)).toBe(text);
  });
});

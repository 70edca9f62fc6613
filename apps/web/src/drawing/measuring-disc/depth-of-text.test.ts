import { describe, expect, test } from 'vitest';
import { depthOfText, readingsOf } from './depth-of-text.ts';

const scale = {
  ...{ station: 1, zeroReading_division: 18, deeperIs: 1 as const, pitch_mm_per_division: 1 },
  ...{ step_division: 0.1, backlash_division: 0.1 },
} as const;
const machine = { min_mm: 0, max_mm: 8 };
const axis = { machineRange: machine, referredTo: 'base', zeroDiscHeight_mm: 15.5, scales: [scale] } as const;
const lever = { machine, mounted: { axis, scale, discHeight_mm: 15.5 } };
const depth = (depth_mm: number): object => ({ kind: 'depth', depth_mm });

// Expected by hand from the scale: flush at 18.0, one division is one millimetre, deeper is more.
describe('depthOfText', () => {
  test.each([
    ['21,5', 3.5],
    ['21.5', 3.5],
    [' 18 ', 0],
    ['26,0', 8],
    ['18,1', 0.1],
  ])('golden: %j is %s mm deep', (text, depth_mm) => {
    expect(depthOfText(lever, text)).toEqual(depth(depth_mm));
  });
  test('golden: on a disc 0.5 mm higher the same reading is 0.5 mm deeper (pins referred to the base)', () => {
    expect(depthOfText({ machine, mounted: { ...lever.mounted, discHeight_mm: 16 } }, '21,5')).toEqual(depth(4));
  });
  test('golden: a scale that counts the other way with 0.5 mm a division: 10 - 7 / 0.5 = 3', () => {
    const other = { ...scale, zeroReading_division: 10, deeperIs: -1, pitch_mm_per_division: 0.5 } as const;
    const mounted = { axis: { ...axis, referredTo: 'disc-top' }, scale: other, discHeight_mm: 15.5 } as const;
    expect(depthOfText({ machine, mounted }, '3')).toEqual(depth(3.5));
    expect(readingsOf({ machine, mounted })).toEqual({ low_division: -6, high_division: 10 });
  });
  test.each(['', 'abc', '2.150,5', '21..5', 'NaN', '1e999'])('refuses: %j is no reading', (text) => {
    expect(depthOfText(lever, text)).toEqual({ kind: 'not-a-number' });
  });
  test('refuses: a reading between two marks, and names both', () => {
    const typed = depthOfText(lever, '21,53');
    expect(typed).toEqual({
      kind: 'off-step',
      lower_division: expect.closeTo(21.5, 9) as number,
      upper_division: expect.closeTo(21.6, 9) as number,
    });
  });
  test.each(['17,9', '26,1', '215', '-3'])('refuses: %j is beyond the machine, never clamped', (text) => {
    expect(depthOfText(lever, text)).toEqual({ kind: 'beyond-machine', low_division: 18, high_division: 26 });
  });
});

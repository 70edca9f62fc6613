import { describe, expect, test } from 'vitest';
import { limitText } from './sheet-facts.ts';
import { stamp } from './use-printed-at.ts';

// By hand: 430 mg +- 7.5 % is 397.75 to 462.25 mg, and a printed limit must not let more through than the true one.
describe('limitText', () => {
  test.each([
    [397.75, 'low', '397.8'],
    [462.25, 'high', '462.2'],
    [417.1, 'low', '417.1'],
    [442.9, 'high', '442.9'],
    [0.1 + 0.2 + 417, 'low', '417.3'],
  ] as const)('golden: %s, %s, is printed %s', (limit, end, text) => {
    expect(limitText(limit, end)).toBe(text);
  });
  test('refuses: no number is no limit', () => {
    expect(limitText(NaN, 'low')).toBe('cannot tell');
  });
});

// ISO 8601: date, time, offset of local time.
describe('stamp', () => {
  test('property: local time with the offset that leads back to the same moment', () => {
    const moment = new Date(1795617900000);
    const [date = '', time = '', offset = ''] = stamp(moment).split(' ');
    const iso = `${date}T${time}:00${offset.replace('UTC', '').replace('−', '-')}`;
    expect(new Date(iso).getTime()).toBe(moment.getTime());
  });
});

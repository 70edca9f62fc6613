import { describe, expect, test } from 'vitest';
import { timeText } from './time-text.ts';

// Offsets as ISO 8601 writes them; sums by hand.
describe('timeText', () => {
  test.each([
    ['2026-11-25T16:02:20Z', 60, '2026-11-25 17:02 UTC+01:00'],
    ['2026-11-25T23:30:00Z', 330, '2026-11-26 05:00 UTC+05:30'],
    ['2026-11-25T01:15:00Z', -210, '2026-11-24 21:45 UTC\u221203:30'],
    ['2026-11-25T16:02:20+01:00', 0, '2026-11-25 15:02 UTC+00:00'],
  ])('golden: %s at %s min is %s', (at, offset_min, text) => {
    expect(timeText(at, offset_min)).toBe(text);
  });
  test('limit: what is no date stays as it came', () => {
    expect(timeText('yesterday')).toBe('yesterday');
  });
});

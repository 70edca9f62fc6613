import { describe, expect, test } from 'vitest';
import { atMm, inMm } from './at-mm.ts';

describe('atMm', () => {
  test('golden: lengths follow the scale of the page, in microns', () => {
    expect(inMm(3.3)).toBe('calc(var(--mm) * 3.3)');
    expect(inMm(1 / 3)).toBe('calc(var(--mm) * 0.333)');
    expect(atMm({ x_mm: 1, y_mm: -2.5 })).toEqual({ left: 'calc(var(--mm) * 1)', top: 'calc(var(--mm) * -2.5)' });
  });
});

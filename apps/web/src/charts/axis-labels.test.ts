import { describe, expect, test } from 'vitest';
import { axisLabels } from './axis-labels.ts';

describe('axisLabels', () => {
  test('property: limits come before ticks, and none stands over another', () => {
    const labels = [
      { mass_mg: 460, kind: 'tick' },
      { mass_mg: 462.25, kind: 'single' },
      { mass_mg: 442.9, kind: 'mean' },
      { mass_mg: 400, kind: 'tick' },
    ] as const;
    const shown = axisLabels(labels, (mass_mg) => 2 * (500 - mass_mg));
    expect(shown.map(({ mass_mg }) => mass_mg)).toEqual([462.25, 442.9, 400]);
  });
});

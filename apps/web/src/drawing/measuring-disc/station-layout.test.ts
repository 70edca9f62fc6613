import { describe, expect, test } from 'vitest';
import { discRows } from './disc-rows.ts';
import { stationLayout } from './station-layout.ts';

describe('stationLayout', () => {
  test('property: half sections lie side by side without gap or overlap, each as wide as its bore is', () => {
    const { places, width_mm } = stationLayout({ stationCount: 5, bore_mm: 6.6 });
    expect(places).toHaveLength(5);
    places.forEach(({ bore_mm, axis_mm, end_mm }, i) => {
      expect(axis_mm - bore_mm).toBeCloseTo(3.3, 12);
      expect(end_mm).toBeCloseTo(places[i + 1]?.bore_mm ?? width_mm, 12);
    });
  });
});

const disc = (heightNominal_mm: number): Parameters<typeof discRows>[0][number] => ({
  ...{ kind: 'disc', number: `D-${heightNominal_mm}`, forSizes: ['0'], boreNominal_mm: 6.6, condition: 'good' },
  heightNominal_mm,
});

describe('discRows', () => {
  test('golden: highest on top, the middle of the list at the middle of the heights (by hand: 15.5)', () => {
    const rows = discRows([disc(15), disc(16), disc(15.5)]);
    expect(rows.map(({ height_mm }) => height_mm)).toEqual([16, 15.5, 15]);
    expect(rows[1]?.at_mm).toBeCloseTo(15.5, 12);
  });
  test('limit: no disc, no row', () => {
    expect(discRows([])).toEqual([]);
  });
});

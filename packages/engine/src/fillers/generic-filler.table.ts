import type { DiscPart, Filler, StationScale } from './filler.ts';

const ZERO_READINGS = [18.0, 18.1, 17.9, 18.0, 18.0];

const scales: readonly StationScale[] = ZERO_READINGS.map((zeroReading_division, i) => ({
  station: i + 1,
  zeroReading_division,
  deeperIs: 1,
  pitch_mm_per_division: 1,
  step_division: 0.1,
  backlash_division: 0.1,
}));

/** Bore by size and the heights in stock: bores inside the trade's usual range for the size, all heights invented. */
const DISCS: readonly { sizes: readonly string[]; bore_mm: number; heights_mm: readonly number[] }[] = [
  { sizes: ['00', '00el'], bore_mm: 7.5, heights_mm: [15, 16, 17, 18] },
  { sizes: ['0', '0el'], bore_mm: 6.6, heights_mm: [14, 14.5, 15, 15.5, 16, 16.5, 17, 17.5, 18] },
  { sizes: ['1'], bore_mm: 6.0, heights_mm: [12, 13, 14, 15] },
  { sizes: ['2'], bore_mm: 5.4, heights_mm: [11, 12, 13, 14] },
  { sizes: ['3'], bore_mm: 5.0, heights_mm: [10, 11, 12] },
  { sizes: ['4'], bore_mm: 4.4, heights_mm: [9, 10, 11] },
];

const discs: readonly DiscPart[] = DISCS.flatMap(({ sizes, bore_mm, heights_mm }) =>
  heights_mm.map((height_mm) => {
    const isMounted = bore_mm === 6.6 && height_mm === 15.5;
    return {
      kind: 'disc',
      number: `D${(10 * bore_mm).toFixed(0)}-${(10 * height_mm).toFixed(0)}`,
      forSizes: sizes,
      boreNominal_mm: bore_mm,
      heightNominal_mm: height_mm,
      condition: 'good',
      ...(isMounted ? { mounted: true as const } : {}),
    };
  }),
);

/**
 * The demo filler: invented, no machine that exists. Six groups of twelve columns over twelve carriers of twelve bores,
 * five tamping stations of which the last usually stands flush.
 */
export const GENERIC_FILLER: Filler = {
  id: 'generic',
  name: 'Generic disc filler',
  carriers: { carrierCount: 12, boreCount: 12 },
  disc: { groupCount: 6, columnCount: 12, isRefilledAfterLastPin: true },
  pins: {
    machineRange: { min_mm: 0, max_mm: 8 },
    referredTo: 'base',
    zeroDiscHeight_mm: 15.5,
    scales,
  },
  speed: { slowest_strokes_per_min: 40, usual_strokes_per_min: 80, fastest_strokes_per_min: 120 },
  parts: [
    ...discs,
    {
      ...{ kind: 'spring-set', number: 'S50', name: 'stiff', condition: 'good', mounted: true },
      preload_N: { basis: 'measured', mean: 50, sd: 1.5, n: 5 },
      rate_N_per_mm: { basis: 'measured', mean: 6, sd: 0.2, n: 5 },
    },
    {
      ...{ kind: 'spring-set', number: 'S30', name: 'soft', condition: 'good' },
      preload_N: { basis: 'measured', mean: 30, sd: 1.5, n: 5 },
      rate_N_per_mm: { basis: 'measured', mean: 6, sd: 0.2, n: 5 },
    },
  ],
  source: 'invented for the demo; trade custom for bores, replace by your own machine and parts',
};

import { defineEntry, type Entry } from '#catalogue';
import { densityAfterTaps_g_per_mL } from './density-after-taps.ts';
import { densityAtPressure_g_per_mL } from './density-at-pressure.ts';
import { INITIAL_DENSITY, INITIAL_PACKING, KAWAKITA, PRESSURE, REDUCTION_LIMIT } from './entry-fields.ts';
import { heckelSolidFraction_frac } from './heckel-solid-fraction.ts';
import { kawakitaTapping_frac } from './kawakita-tapping.ts';
import { walkerRelativeVolume_ratio } from './walker-relative-volume.ts';

const TAPPING = [
  REDUCTION_LIMIT,
  { key: 'b_per_tap', title: 'slope per tap, b', kind: 'number', unit: '1/tap', above: 0, max: 10 },
  { key: 'tapCount', title: 'number of taps', kind: 'integer', unit: '1', min: 0, max: 1000000 },
] as const;
const DENSITY = { key: 'density_g_per_mL', title: 'density', kind: 'number', unit: 'g/mL' } as const;
const SOLID_FRACTION = { key: 'solidFraction_frac', title: 'solid fraction', kind: 'number', unit: '1' } as const;
const TAPPING_VALIDITY =
  'Constants belong to one poured state, one cylinder and one way of tapping; a is near CI/100 where the curve starts at the poured volume. For vibration of cohesive powder take cycles for taps. Outside the taps it was fitted on the curve is a guess.';

export const compressionEntries: readonly Entry[] = [
  defineEntry({
    id: 'materials.kawakita-tapping',
    title: 'Volume lost on tapping, Kawakita',
    equation: 'C(n) = \\frac{V_0-V_n}{V_0} = \\frac{a\\,b\\,n}{1+b\\,n}',
    inputs: TAPPING,
    outputs: [{ key: 'reduction_frac', title: 'share of the poured volume lost', kind: 'number', unit: '1' }],
    sources: [KAWAKITA],
    validity: TAPPING_VALIDITY,
    restsOn: 'a fitted law of two constants',
    compute: (tapping) => ({ reduction_frac: kawakitaTapping_frac(tapping) }),
  }),
  defineEntry({
    id: 'materials.density-after-taps',
    title: 'Density after a number of taps, Kawakita',
    equation: '\\rho_n = \\frac{\\rho_0}{1-C(n)},\\quad C(n) = \\frac{a\\,b\\,n}{1+b\\,n}',
    inputs: [INITIAL_DENSITY, ...TAPPING],
    outputs: [DENSITY],
    sources: [KAWAKITA],
    validity: `${TAPPING_VALIDITY} The density at the start must be the one the curve was fitted from.`,
    restsOn: 'a fitted law of two constants, and the poured density',
    compute: (input) => ({ density_g_per_mL: densityAfterTaps_g_per_mL(input) }),
  }),
  defineEntry({
    id: 'materials.kawakita-pressure',
    title: 'Plug density under pressure, Kawakita',
    equation: '\\rho = \\frac{\\rho_0}{1-C},\\quad C = \\frac{a\\,b\\,P}{1+b\\,P}',
    inputs: [
      INITIAL_DENSITY,
      REDUCTION_LIMIT,
      { key: 'b_per_MPa', title: 'slope per pressure, b', kind: 'number', unit: '1/MPa', above: 0, max: 1000 },
      PRESSURE,
    ],
    outputs: [DENSITY],
    sources: [KAWAKITA, INITIAL_PACKING],
    validity:
      'a and b belong to the one initial packing they were fitted from: fill the die as the machine fills it and stay inside the fitted pressures (a slug sees 0.7-7 MPa). Constants from tablet pressures must not be used. Mean density of a plug in a die of this bore, so wall friction is inside the law.',
    restsOn: 'a fitted law of two constants, measured on a press in a bore-sized die',
    compute: ({ pressure_MPa, ...law }) => ({
      density_g_per_mL: densityAtPressure_g_per_mL({ kind: 'kawakita', ...law }, pressure_MPa),
    }),
  }),
  defineEntry({
    id: 'materials.heckel',
    title: 'Solid fraction under pressure, Heckel',
    equation: '\\ln\\frac{1}{1-D} = \\frac{P}{P_y} + A',
    inputs: [
      PRESSURE,
      { key: 'yieldPressure_MPa', title: 'mean yield pressure', kind: 'number', unit: 'MPa', above: 0, max: 5000 },
      { key: 'intercept_ratio', title: 'intercept, A', kind: 'number', unit: '1', min: 0, max: 10 },
    ],
    outputs: [SOLID_FRACTION],
    sources: [{ text: 'Heckel, Trans. Metall. Soc. AIME 221 (1961) 671', read: 'from memory' }],
    validity:
      'Straight above 10-20 MPa only: below that particles still rearrange. A yield pressure from tabletting must not be used to predict the density of a slug (0.7-7 MPa).',
    restsOn: 'a fitted law of two constants; depends on the true density and on measuring in or out of the die',
    compute: (input) => ({ solidFraction_frac: heckelSolidFraction_frac(input) }),
  }),
  defineEntry({
    id: 'materials.walker',
    title: 'Relative volume under pressure, Walker',
    equation: '100\\,V = \\frac{100}{D} = C - W\\,\\log_{10}\\frac{P}{P_0}',
    inputs: [
      {
        key: 'slope_pct',
        title: 'loss of relative volume per decade, W',
        kind: 'number',
        unit: '%',
        above: 0,
        max: 1000,
      },
      { key: 'intercept_pct', title: 'relative volume at P0, C', kind: 'number', unit: '%', min: 100, max: 5000 },
      { key: 'pressure_MPa', title: 'pressure', kind: 'number', unit: 'MPa', above: 0, max: 2000 },
      {
        key: 'referencePressure_MPa',
        title: 'reference pressure, P0',
        kind: 'number',
        unit: 'MPa',
        above: 0,
        max: 2000,
      },
    ],
    outputs: [
      { key: 'relativeVolume_ratio', title: 'volume per volume of solid', kind: 'number', unit: '1' },
      SOLID_FRACTION,
    ],
    sources: [
      { text: 'Walker, Trans. Faraday Soc. 19 (1923) 73 (form)', read: 'from memory' },
      {
        text: 'W predicts densification of plugs in a nozzle filler: abstract of a study of bed depth and speed',
        read: 'secondary',
      },
    ],
    validity:
      'Inside the pressures it was fitted on. A relative volume below 1 (solid fraction above 1) means that the law has left its range.',
    restsOn: 'a fitted law of two constants, and the true density',
    compute: (input) => {
      const relativeVolume_ratio = walkerRelativeVolume_ratio(input);
      return { relativeVolume_ratio, solidFraction_frac: 1 / relativeVolume_ratio };
    },
  }),
];

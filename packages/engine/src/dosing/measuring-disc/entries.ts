import { defineEntry, DomainError, type Entry } from '#catalogue';
import { boreArea_mm2 } from './bore-area.ts';
import { discRecurrence_mg } from './disc-recurrence.ts';
import {
  A,
  B,
  BORE,
  CAPTURED,
  DEPTHS,
  FEED,
  FROM_BELOW,
  GEOMETRY,
  HEIGHT,
  INITIAL,
  MASSES,
  PRELOAD,
  RATE,
  REFILL,
  REFILLED,
  STATIONS,
} from './entry-fields.ts';
import { partChangeEntry } from './part-change-entry.ts';
import { stepGainEntry } from './step-gain-entry.ts';
import { tampStations } from './tamp-stations.ts';

const geometric: readonly Entry[] = [
  defineEntry({
    id: 'dosing.disc-height',
    title: 'Disc height for a slug mass and density',
    equation: 'H = \\frac{W}{\\rho\\,\\pi D^2/4}',
    inputs: [
      { key: 'slugMass_mg', title: 'slug mass', kind: 'number', unit: 'mg', above: 0 },
      { key: 'slugDensity_g_per_mL', title: 'mean slug density', kind: 'number', unit: 'g/mL', above: 0, max: 5 },
      BORE,
    ],
    outputs: [{ key: 'discHeight_mm', title: 'disc height', kind: 'number', unit: 'mm' }],
    sources: [GEOMETRY],
    validity: 'A first height; discs come in steps, choose the one that leaves the pins inside their range.',
    restsOn: 'the slug density, which depends on the pins: see dosing.disc-stations',
    compute: ({ slugMass_mg, slugDensity_g_per_mL, boreDiameter_mm }) => ({
      discHeight_mm: slugMass_mg / (slugDensity_g_per_mL * boreArea_mm2(boreDiameter_mm)),
    }),
  }),
  defineEntry({
    id: 'dosing.disc-recurrence',
    title: 'Mass in the bore after each station, all pins on their stops',
    equation: 'm_0 = \\rho_0 A H,\\quad m_k = m_{k-1} + f_k\\,\\rho_0 A\\,p_k',
    inputs: [FEED, BORE, HEIGHT, DEPTHS, { ...REFILL, key: 'refills_ratio', list: STATIONS }],
    outputs: [
      {
        key: 'masses_mg',
        title: 'mass before the first tamp and after each refill',
        kind: 'number',
        unit: 'mg',
        list: MASSES,
      },
    ],
    sources: [GEOMETRY],
    validity: `Only while no spring yields; a flush last pin adds nothing. ${FROM_BELOW}`,
    restsOn: 'geometry, the feed density in the bowl and the refill factors',
    compute: (inputs) => ({ masses_mg: discRecurrence_mg(inputs) }),
  }),
  defineEntry({
    id: 'dosing.disc-pin-gain',
    title: 'Mass per millimetre of a pin on its stop',
    equation: '\\frac{dW}{dp} = f\\,\\rho_0 A',
    inputs: [FEED, BORE, REFILL],
    outputs: [{ key: 'gain_mg_per_mm', title: 'mass per mm of pin depth', kind: 'number', unit: 'mg/mm' }],
    sources: [GEOMETRY],
    validity: 'Pins on their stops. On spring the gain drops, with deep pins to about 0, and disc and spring rule.',
    restsOn: 'feed density and refill factor, which weights at one pin setting cannot tell apart',
    compute: ({ feedDensity_g_per_mL, boreDiameter_mm, refill_ratio }) => ({
      gain_mg_per_mm: refill_ratio * feedDensity_g_per_mL * boreArea_mm2(boreDiameter_mm),
    }),
  }),
];

const forces: readonly Entry[] = [
  defineEntry({
    id: 'dosing.tamp-pressure',
    title: 'Pressure of a force on a bore',
    equation: 'P = \\frac{F}{\\pi D^2/4}',
    inputs: [{ key: 'forces_N', title: 'force', kind: 'number', unit: 'N', min: 0, list: { min: 1, max: 100 } }, BORE],
    outputs: [{ key: 'pressures_MPa', title: 'pressure', kind: 'number', unit: 'MPa', list: { min: 1, max: 100 } }],
    sources: [{ text: 'definition of pressure', read: 'geometry' }],
    validity: 'Slugs see 0.7 to 7 MPa, tablets a thousand times more: constants from tabletting do not carry over.',
    restsOn: 'geometry',
    compute: ({ forces_N, boreDiameter_mm }) => ({
      pressures_MPa: forces_N.map((force_N) => force_N / boreArea_mm2(boreDiameter_mm)),
    }),
  }),
  defineEntry({
    id: 'dosing.spring-force',
    title: 'Force of a preloaded pin spring',
    equation: 'F = F_0 + k\\,(x_{set} - x)',
    inputs: [
      PRELOAD,
      RATE,
      {
        key: 'compression_mm',
        title: 'compression of the spring beyond its preload',
        kind: 'number',
        unit: 'mm',
        min: 0,
        max: 60,
      },
    ],
    outputs: [{ key: 'force_N', title: 'force', kind: 'number', unit: 'N' }],
    sources: [{ text: 'linear spring law', read: 'geometry' }],
    validity: 'Linear part of the spring; a stronger spring changes slug strength more than weight.',
    restsOn: 'preload and rate of the spring set, measured on a balance',
    compute: ({ preload_N, rate_N_per_mm, compression_mm }) => ({
      force_N: preload_N + rate_N_per_mm * compression_mm,
    }),
  }),
];

const LIST_OF_STATIONS = { list: STATIONS } as const;

const stations = defineEntry({
  id: 'dosing.disc-stations',
  title: 'Measuring disc with spring plungers, station by station',
  equation:
    'A\\,P\\!\\left(\\tfrac{M}{A(H-x_k)}\\right) = F_0 + k_s(p_k - x_k)\\ \\text{or}\\ x_k = p_k,\\quad M = m_{k-1}+c_k,\\quad m_k = M + f\\,\\rho_0 A\\,x_k',
  inputs: [FEED, BORE, HEIGHT, DEPTHS, REFILL, CAPTURED, A, B, INITIAL, PRELOAD, RATE, REFILLED],
  outputs: [
    { key: 'masses_mg', title: 'mass when each station is left', kind: 'number', unit: 'mg', ...LIST_OF_STATIONS },
    { key: 'reached_mm', title: 'depth really reached', kind: 'number', unit: 'mm', ...LIST_OF_STATIONS },
    { key: 'regimes', title: 'on stop, on spring, limited or flush', kind: 'text', ...LIST_OF_STATIONS },
    { key: 'forces_N', title: 'force on the pin, 0 when flush', kind: 'number', unit: 'N', ...LIST_OF_STATIONS },
    { key: 'slugDensity_g_per_mL', title: 'mean density over the disc height', kind: 'number', unit: 'g/mL' },
  ],
  sources: [GEOMETRY, { text: 'Kawakita & Luedde, Powder Technology 4 (1971) 61', read: 'from memory' }],
  validity: `One refill factor for all stations; the compression law belongs to a die of this bore and to its starting packing. ${FROM_BELOW}`,
  restsOn: 'feed density, refill factor, compression law and springs: each with its own interval',
  compute: (inputs) => {
    const {
      boreDiameter_mm,
      a_frac,
      b_per_MPa,
      initialDensity_g_per_mL,
      captured_mg = 0,
      isRefilledAfterLastPin = true,
    } = inputs;
    const law = { kind: 'kawakita', a_frac, b_per_MPa, initialDensity_g_per_mL } as const;
    const area_mm2 = boreArea_mm2(boreDiameter_mm);
    const trace = tampStations({ ...inputs, boreArea_mm2: area_mm2, captured_mg, law, isRefilledAfterLastPin });
    const last_mg = trace.at(-1)?.mass_mg ?? NaN;
    return {
      masses_mg: trace.map((station) => station.mass_mg),
      reached_mm: trace.map((station) => station.reached_mm),
      regimes: trace.map((station) => station.regime),
      forces_N: trace.map((station) => station.force_N ?? 0),
      slugDensity_g_per_mL: last_mg / (area_mm2 * inputs.discHeight_mm),
    };
  },
});

const tampedDensity = defineEntry({
  id: 'dosing.tamped-density',
  title: 'Mean density under a pin while it tamps',
  equation: '\\rho = \\frac{M}{A\\,(H - x)},\\quad A = \\frac{\\pi D^2}{4}',
  inputs: [
    { key: 'pressed_mg', title: 'mass under the pin', kind: 'number', unit: 'mg', above: 0, max: 5000 },
    BORE,
    HEIGHT,
    { key: 'reached_mm', title: 'depth the pin reaches, 0 when flush', kind: 'number', unit: 'mm', min: 0, max: 60 },
  ],
  outputs: [{ key: 'density_g_per_mL', title: 'mean density', kind: 'number', unit: 'g/mL' }],
  sources: [{ text: 'mass over the volume of a cylinder', read: 'geometry' }],
  validity:
    'Before the refill of this station. The mean over the height: wall friction packs the top more than the foot.',
  restsOn: 'the mass that enters the station, and the depth of the pin',
  compute: ({ pressed_mg, boreDiameter_mm, discHeight_mm, reached_mm }) => {
    if (reached_mm >= discHeight_mm)
      throw new DomainError('out-of-range', { reached_mm, min: 0, below: discHeight_mm });
    return { density_g_per_mL: pressed_mg / (boreArea_mm2(boreDiameter_mm) * (discHeight_mm - reached_mm)) };
  },
});

const slug: readonly Entry[] = [
  defineEntry({
    id: 'dosing.released-slug',
    title: 'Length and width of a slug once released',
    equation: 'L = H\\,(1+e_a),\\quad W = D\\,(1+e_r),\\quad s = H\\,e_a',
    inputs: [
      HEIGHT,
      BORE,
      { key: 'axialSpringback_pct', title: 'springback in length', kind: 'number', unit: '%', min: 0, max: 50 },
      { key: 'radialSpringback_pct', title: 'springback in width', kind: 'number', unit: '%', min: 0, max: 20 },
    ],
    outputs: [
      { key: 'released_mm', title: 'length', kind: 'number', unit: 'mm' },
      { key: 'width_mm', title: 'width', kind: 'number', unit: 'mm' },
      { key: 'springback_mm', title: 'what springback adds to the length', kind: 'number', unit: 'mm' },
    ],
    sources: [{ text: 'springback 2 to 10 % in length', read: 'common practice, no source' }],
    validity:
      'Acts on ejection. The length decides whether the slug stays whole, the width only whether it enters the body.',
    restsOn: 'springback, a guess until ten slugs are measured',
    compute: ({ discHeight_mm, boreDiameter_mm, axialSpringback_pct, radialSpringback_pct }) => ({
      released_mm: discHeight_mm * (1 + axialSpringback_pct / 100),
      width_mm: boreDiameter_mm * (1 + radialSpringback_pct / 100),
      springback_mm: discHeight_mm * (axialSpringback_pct / 100),
    }),
  }),
  defineEntry({
    id: 'dosing.loose-refill',
    title: 'Loose powder that the last refill leaves on the slug',
    equation: 's = x_n - e\\,(H - x_n)',
    inputs: [
      HEIGHT,
      { key: 'reached_mm', title: 'depth the last working pin reached', kind: 'number', unit: 'mm', min: 0, max: 60 },
      { key: 'axialSpringback_pct', title: 'springback in length', kind: 'number', unit: '%', min: 0, max: 50 },
    ],
    outputs: [{ key: 'loose_mm', title: 'loose powder above the slug', kind: 'number', unit: 'mm' }],
    sources: [{ text: 'warned of above 1 mm', read: 'common practice, no source' }],
    validity: 'The last station is meant to be flush; below 0 the slug springs past the disc face.',
    restsOn: 'springback of the slug',
    compute: ({ discHeight_mm, reached_mm, axialSpringback_pct }) => ({
      loose_mm: reached_mm - (axialSpringback_pct / 100) * (discHeight_mm - reached_mm),
    }),
  }),
];

const largest = defineEntry({
  id: 'dosing.largest-slug',
  title: 'Heaviest slug that stays whole in a shell',
  equation: 'W_{max} = \\frac{\\rho\\,A\\,L_{max}}{1+e_a},\\quad A = \\frac{\\pi D^2}{4}',
  inputs: [
    { key: 'slugDensity_g_per_mL', title: 'mean slug density', kind: 'number', unit: 'g/mL', above: 0, max: 5 },
    BORE,
    { key: 'longestSlug_mm', title: 'longest slug that stays whole', kind: 'number', unit: 'mm', above: 0, max: 60 },
    { key: 'axialSpringback_pct', title: 'springback in length', kind: 'number', unit: '%', min: 0, max: 50 },
  ],
  outputs: [{ key: 'mass_mg', title: 'mass of the slug', kind: 'number', unit: 'mg' }],
  sources: [{ text: 'geometry of a cylinder, springback taken off its length', read: 'geometry' }],
  validity: 'Packed as the slug it is compared with; a longer one crumbles when the cap closes.',
  restsOn: 'the slug density, the figures of the shell and the springback',
  compute: ({ slugDensity_g_per_mL, boreDiameter_mm, longestSlug_mm, axialSpringback_pct }) => ({
    mass_mg: (slugDensity_g_per_mL * boreArea_mm2(boreDiameter_mm) * longestSlug_mm) / (1 + axialSpringback_pct / 100),
  }),
});

/** Catalogue entries of the measuring disc. */
export const entries: readonly Entry[] = [
  ...geometric,
  ...forces,
  stations,
  tampedDensity,
  stepGainEntry,
  partChangeEntry,
  ...slug,
  largest,
];

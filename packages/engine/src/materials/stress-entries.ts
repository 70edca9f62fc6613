import { defineEntry, type Entry } from '#catalogue';
import { GRAVITY, GRAVITY_SOURCE, JANSSEN, LATERAL_STRESS, SHAXBY_EVANS, WALL_FRICTION } from './entry-fields.ts';
import { meanStress_frac } from './mean-stress.ts';
import { orificeFlow_g_per_s } from './orifice-flow.ts';
import { siloStressLimit_Pa } from './silo-stress-limit.ts';
import { siloStress_Pa } from './silo-stress.ts';
import { transmittedStress_frac } from './transmitted-stress.ts';

const PLUG = [
  WALL_FRICTION,
  LATERAL_STRESS,
  { key: 'length_mm', title: 'length of the plug', kind: 'number', unit: 'mm', min: 0, max: 200 },
  { key: 'diameter_mm', title: 'diameter of the bore', kind: 'number', unit: 'mm', above: 0, max: 100 },
] as const;
const BULK_DENSITY = {
  key: 'density_kg_per_m3',
  title: 'bulk density',
  kind: 'number',
  unit: 'kg/m3',
  above: 0,
  max: 10000,
} as const;
const DIAMETER = {
  key: 'diameter_m',
  title: 'inner diameter',
  kind: 'number',
  unit: 'm',
  above: 0,
  max: 50,
} as const;
const STRESS = { key: 'stress_Pa', title: 'vertical stress', kind: 'number', unit: 'Pa' } as const;
const PLUG_VALIDITY =
  'Friction 0.2-0.5 unlubricated, 0.1-0.2 lubricated, stress ratio 0.35-0.5 (from memory), taken as constant along the plug. A compression law fitted in a die of this bore has wall friction inside already: use this for the profile, not once more for the mean.';

export const stressEntries: readonly Entry[] = [
  defineEntry({
    id: 'materials.stress-ratio',
    title: 'Stress that reaches the far end of a plug',
    equation: '\\frac{\\sigma_{low}}{\\sigma_{top}} = e^{-4\\mu K L/D}',
    inputs: PLUG,
    outputs: [{ key: 'transmitted_frac', title: 'share of the stress at the top', kind: 'number', unit: '1' }],
    sources: [SHAXBY_EVANS],
    validity: `${PLUG_VALIDITY} A plug twice as long as wide is markedly denser at the ram.`,
    restsOn: 'a force balance, and two coefficients that are seldom measured',
    compute: (plug) => ({ transmitted_frac: transmittedStress_frac(plug) }),
  }),
  defineEntry({
    id: 'materials.mean-plug-stress',
    title: 'Mean stress along a plug',
    equation: '\\bar\\sigma = \\sigma_{top}\\,\\frac{1-e^{-k}}{k},\\quad k = \\frac{4\\mu K L}{D}',
    inputs: [
      { key: 'topStress_MPa', title: 'stress at the ram', kind: 'number', unit: 'MPa', min: 0, max: 2000 },
      ...PLUG,
    ],
    outputs: [{ key: 'meanStress_MPa', title: 'mean axial stress', kind: 'number', unit: 'MPa' }],
    sources: [{ text: `integral of the profile of ${SHAXBY_EVANS.text}`, read: 'from memory' }],
    validity: PLUG_VALIDITY,
    restsOn: 'a force balance, and two coefficients that are seldom measured',
    compute: ({ topStress_MPa, ...plug }) => ({ meanStress_MPa: topStress_MPa * meanStress_frac(plug) }),
  }),
  defineEntry({
    id: 'materials.silo-stress',
    title: 'Stress at a depth of a hopper or tube of powder',
    equation: '\\sigma(z) = \\frac{\\rho g D}{4\\mu K}\\left(1-e^{-4\\mu K z/D}\\right)',
    inputs: [
      BULK_DENSITY,
      DIAMETER,
      WALL_FRICTION,
      LATERAL_STRESS,
      { key: 'depth_m', title: 'depth below the surface', kind: 'number', unit: 'm', min: 0, max: 100 },
      GRAVITY,
    ],
    outputs: [STRESS],
    sources: [JANSSEN, GRAVITY_SOURCE],
    validity:
      'At rest, vertical round walls, no load on the surface, wall friction fully mobilised; without friction it is the weight of the column. Beyond two diameters of depth the bed height no longer loads the outlet.',
    restsOn: 'a force balance, and two coefficients that are seldom measured',
    compute: (column) => ({ stress_Pa: siloStress_Pa(column) }),
  }),
  defineEntry({
    id: 'materials.silo-stress-limit',
    title: 'Greatest stress in a deep hopper or tube of powder',
    equation: '\\sigma_\\infty = \\frac{\\rho g D}{4\\mu K}',
    inputs: [
      BULK_DENSITY,
      DIAMETER,
      {
        key: 'wallFriction_ratio',
        title: 'wall friction coefficient',
        kind: 'number',
        unit: '1',
        above: 0,
        max: 2,
      },
      {
        key: 'lateralStress_ratio',
        title: 'lateral over axial stress',
        kind: 'number',
        unit: '1',
        above: 0,
        max: 1,
      },
      GRAVITY,
    ],
    outputs: [STRESS],
    sources: [{ text: `${JANSSEN.text}, limit of great depth`, read: 'from memory' }, GRAVITY_SOURCE],
    validity: 'At rest, vertical round walls, no load on the surface. Without wall friction there is no limit.',
    restsOn: 'a force balance, and two coefficients that are seldom measured',
    compute: (column) => ({ stress_Pa: siloStressLimit_Pa(column) }),
  }),
  defineEntry({
    id: 'materials.orifice-flow',
    title: 'Flow of coarse particles through an orifice',
    equation: 'W = 0.58\\,\\rho_b\\,\\sqrt{g}\\,(D_0-1.4\\,d)^{2.5}',
    inputs: [
      BULK_DENSITY,
      { key: 'orificeDiameter_m', title: 'diameter of the orifice', kind: 'number', unit: 'm', above: 0, max: 2 },
      { key: 'particleDiameter_m', title: 'diameter of the particles', kind: 'number', unit: 'm', above: 0, max: 1 },
      GRAVITY,
    ],
    outputs: [{ key: 'massFlow_g_per_s', title: 'mass flow', kind: 'number', unit: 'g/s' }],
    sources: [
      {
        text: 'Beverloo, Leniger & van de Velde, Chem. Eng. Sci. 15 (1961) 260; 0.58 and 1.4 for near-spheres',
        read: 'from memory',
      },
      GRAVITY_SOURCE,
    ],
    validity:
      'Free-flowing particles above about 0.4 mm, orifice above about 6 particle diameters; an orifice not above 1.4 diameters is refused. Powder below about 0.3 mm flows far slower, held back by the air it must take in.',
    restsOn: 'a correlation of two fitted constants',
    compute: (input) => ({ massFlow_g_per_s: orificeFlow_g_per_s(input) }),
  }),
];

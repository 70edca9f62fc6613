import { defineEntry, type Entry } from '#catalogue';
import { apparentWallDensity_g_per_mL } from './apparent-wall-density.ts';
import {
  BODY_DIAMETER,
  BODY_DOUBLE_WALL,
  BODY_LENGTH,
  CAP_DIAMETER,
  CAP_DOUBLE_WALL,
  CAP_LENGTH,
  GEOMETRY,
  MATERIAL,
  SHELL_MASS,
} from './entry-fields.ts';
import { WATER_LIMITS } from './water-limits.table.ts';
import { waterTransferred_mg } from './water-transferred.ts';

export const moistureEntries: readonly Entry[] = [
  defineEntry({
    id: 'shells.water-limits',
    title: 'Water of empty shells, limits',
    equation: '\\text{table lookup}',
    inputs: [MATERIAL],
    outputs: [
      { key: 'lower_pct', title: 'loss on drying from, wet basis', kind: 'number', unit: '%' },
      { key: 'upper_pct', title: 'loss on drying to, wet basis', kind: 'number', unit: '%' },
    ],
    sources: [
      {
        text: 'gelatin: Japanese Pharmacopoeia, Capsules, draft revision text of December 2013 (1 g, 105 degC, 2 h)',
        read: 'seen',
      },
      { text: 'HPMC: "3.0-8.0 %, IP/USP" as told by a trade page, pharmacopoeia not seen', read: 'secondary' },
      { text: 'pullulan: draft standard for empty pullulan shells, issuing body not legible', read: 'secondary' },
    ],
    validity:
      'Loss on drying is on the wet basis: 16 % wet is 19.05 % dry. Other ranges are in use (gelatin 12.5-16, HPMC 2-7 or 4-6, pullulan 10-15 %); the specification of the shell lot counts.',
    restsOn: 'limits of specifications; those of HPMC and pullulan are second-hand',
    compute: ({ material }) => {
      const { lower_pct, upper_pct } = WATER_LIMITS.find((row) => row.material === material)!;
      return { lower_pct, upper_pct };
    },
  }),
  defineEntry({
    id: 'shells.water-transferred',
    title: 'Water that a shell gives off',
    equation: 'm_w = m\\,(1-w_1)\\left(\\frac{w_1}{1-w_1}-\\frac{w_2}{1-w_2}\\right)',
    inputs: [
      SHELL_MASS,
      {
        key: 'waterBefore_frac',
        title: 'loss on drying before, wet basis',
        kind: 'number',
        unit: '1',
        min: 0,
        below: 1,
      },
      { key: 'waterAfter_frac', title: 'loss on drying after, wet basis', kind: 'number', unit: '1', min: 0, below: 1 },
    ],
    outputs: [{ key: 'water_mg', title: 'water given off; below 0 taken up', kind: 'number', unit: 'mg' }],
    sources: [{ text: 'mass balance of the dry shell', read: 'geometry' }],
    validity:
      'Loss on drying on the wet basis; isotherms are on the dry basis and must not be entered here. The mass is that before, with its water. A dry fill can make gelatin brittle in a humid room.',
    restsOn: 'exact arithmetic on two losses on drying',
    compute: (input) => ({ water_mg: waterTransferred_mg(input) }),
  }),
  defineEntry({
    id: 'shells.apparent-wall-density',
    title: 'Apparent density of the wall of a shell',
    equation:
      '\\rho = \\frac{m}{S_b t_b+S_c t_c},\\quad S = \\pi D_m\\left(L-\\tfrac{1}{2}OD\\right)+2\\pi\\left(\\tfrac{1}{2}D_m\\right)^2,\\quad D_m = OD-t',
    inputs: [SHELL_MASS, BODY_LENGTH, BODY_DIAMETER, BODY_DOUBLE_WALL, CAP_LENGTH, CAP_DIAMETER, CAP_DOUBLE_WALL],
    outputs: [{ key: 'density_g_per_mL', title: 'apparent density', kind: 'number', unit: 'g/mL' }],
    sources: [GEOMETRY],
    validity:
      'A trap, not a property: ends and shoulders are thicker than the wall, so 1.44 g/mL comes out for size 0 where the material has 1.30-1.35 (from memory). Never work out shell mass from the wall gauge; t is half the double wall.',
    restsOn: 'an even wall, which real shells do not have',
    compute: (shell) => ({ density_g_per_mL: apparentWallDensity_g_per_mL(shell) }),
  }),
];

import { defineEntry, type Entry } from '#catalogue';
import { LUBRICANT_LEVELS, LUBRICATED_FILLERS } from './lubricant-levels.table.ts';
import { massOfVolume_mg } from './mass-of-volume.ts';
import { mixtureDensity_g_per_mL } from './mixture-density.ts';

export const mixtureEntries: readonly Entry[] = [
  defineEntry({
    id: 'materials.mass-of-volume',
    title: 'Mass of powder in a volume',
    equation: 'm = V\\,\\rho',
    inputs: [
      { key: 'volume_mL', title: 'volume filled', kind: 'number', unit: 'mL', min: 0, max: 100000 },
      { key: 'density_g_per_mL', title: 'density in this volume', kind: 'number', unit: 'g/mL', above: 0, max: 25 },
    ],
    outputs: [{ key: 'mass_mg', title: 'mass', kind: 'number', unit: 'mg' }],
    sources: [{ text: 'definition of density', read: 'geometry' }],
    validity: 'The density must be the one the powder has in this volume: poured, tapped or pressed, not the true one.',
    restsOn: 'the density as filled',
    compute: (input) => ({ mass_mg: massOfVolume_mg(input) }),
  }),
  defineEntry({
    id: 'materials.mixture-density',
    title: 'Density of a mixture from its parts',
    equation: '\\rho = \\frac{1}{\\sum_i w_i/\\rho_i}',
    inputs: [
      {
        key: 'massShares_frac',
        title: 'shares by mass, together 1',
        kind: 'number',
        unit: '1',
        min: 0,
        max: 1,
        list: { min: 1, max: 50 },
      },
      {
        key: 'densities_g_per_mL',
        title: 'densities of the parts',
        kind: 'number',
        unit: 'g/mL',
        above: 0,
        max: 25,
        list: { min: 1, max: 50 },
      },
    ],
    outputs: [{ key: 'density_g_per_mL', title: 'density of the mixture', kind: 'number', unit: 'g/mL' }],
    sources: [
      { text: 'volumes of the parts add (mass balance)', read: 'geometry' },
      {
        text: 'Podczeck, chapter "Plug formation": tapped density of binary mixtures follows volume fractions (abstract)',
        read: 'secondary',
      },
    ],
    validity:
      'Exact for true densities. For poured and tapped densities a starting value: fines fill the voids of coarse parts and a lubricant changes the packing. Shares must add to 1 within 0.000001.',
    restsOn: 'additive volumes; measure the blend',
    compute: (input) => ({ density_g_per_mL: mixtureDensity_g_per_mL(input) }),
  }),
  defineEntry({
    id: 'materials.lubricant-levels',
    title: 'Lubricant level of least ejection force',
    equation: '\\text{table lookup}',
    inputs: [
      {
        key: 'filler',
        title: 'filler of the blend',
        kind: 'choice',
        choices: LUBRICATED_FILLERS,
        list: { min: 1, max: 3 },
      },
    ],
    outputs: [
      {
        key: 'level_pct',
        title: 'magnesium stearate, share of the blend by mass',
        kind: 'number',
        unit: '%',
        list: { min: 1, max: 3 },
      },
    ],
    sources: [
      {
        text: 'Ridgway Watt & Armstrong (eds), Tablet and Capsule Machine Instrumentation (2008), ch. 10, p. 233',
        read: 'seen',
      },
    ],
    validity:
      'Three fillers, magnesium stearate, slugs of one study; grade and mixing time of the lubricant shift it. More lubricant weakens slugs of cellulose (not of lactose) and slows release.',
    restsOn: 'one published study',
    compute: ({ filler }) => ({
      level_pct: filler.map((name) => LUBRICANT_LEVELS[LUBRICATED_FILLERS.indexOf(name)]?.level_pct ?? NaN),
    }),
  }),
];

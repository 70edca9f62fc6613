import { defineEntry, type Entry } from '#catalogue';
import { kilogramForce_N } from './units.ts';

export const entries: readonly Entry[] = [
  defineEntry({
    id: 'quantity.kilogram-force',
    title: 'Kilogram-force in newton',
    equation: 'F = 9.80665\\,F_{kgf}',
    inputs: [{ key: 'force_kgf', title: 'force', kind: 'number', unit: 'kgf', min: 0 }],
    outputs: [{ key: 'force_N', title: 'force', kind: 'number', unit: 'N' }],
    sources: [{ text: '3rd General Conference on Weights and Measures (1901), standard gravity', read: 'from memory' }],
    validity: 'Exact by definition. Older plug studies print forces in kilogram-force, often rounded to 10 N per kgf.',
    restsOn: 'a definition',
    compute: ({ force_kgf }) => ({ force_N: kilogramForce_N(force_kgf) }),
  }),
];

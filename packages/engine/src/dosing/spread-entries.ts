import { defineEntry, type Entry } from '#catalogue';

/** Catalogue entries of the spread between capsules, whatever the way of dosing. */
export const spreadEntries: readonly Entry[] = [
  defineEntry({
    id: 'dosing.unit-spread',
    title: 'Spread between capsules from its causes',
    equation: 'u = \\sqrt{\\sum u_i^2}',
    inputs: [
      {
        key: 'causes_pct',
        title: 'standard deviation by cause, of the mass',
        kind: 'number',
        unit: '%',
        min: 0,
        max: 100,
        list: { min: 1, max: 20 },
      },
    ],
    outputs: [{ key: 'unit_pct', title: 'spread between capsules, one sd', kind: 'number', unit: '%' }],
    sources: [{ text: 'variances of independent causes add, JCGM 100:2008 5.1.2', read: 'from memory' }],
    validity: 'Causes independent of each other, net masses. Slow drifts are not in it.',
    restsOn: 'the spread of each cause, guesses until a machine has a record of its own',
    compute: ({ causes_pct }) => ({
      unit_pct: Math.sqrt(causes_pct.reduce((sum, cause_pct) => sum + cause_pct * cause_pct, 0)),
    }),
  }),
];

import {
  boxBehnken,
  centralComposite,
  designEfficiency,
  dOptimal,
  fractionalFactorial,
  fullFactorial,
  gridCandidates,
} from '@fillwright/stats/designs';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import * as fields from './fields.ts';
import { present } from './present.ts';
import { runsInOrder } from './runs-in-order.ts';

const { CENTRE_COUNT, D_EFFICIENCY, FACTOR_COUNT, GENERATORS, LEVELS, LOG_DETERMINANT, MODEL, ORDER } = fields;
const { RUN_COUNT, RUNS, SEED, TEXTBOOK } = fields;
const CODED = 'Coded levels: -1 and 1 are the ends of the range of each factor.';

/** Entries that make a design. */
export const constructions: readonly Entry[] = [
  defineEntry({
    id: 'statistics.full-factorial',
    title: 'Two-level full factorial design',
    equation: 'n = 2^k',
    inputs: [FACTOR_COUNT, ORDER],
    outputs: [RUN_COUNT, RUNS],
    sources: [TEXTBOOK],
    validity: `${CODED} Centre points show curvature, but not of which factor: squares are aliased with one another.`,
    restsOn: 'definition; standard order, the first factor changes fastest',
    compute: ({ factorCount, order }) => {
      const rows = fromStats(() => fullFactorial({ factorCount }));
      return { runCount: rows.length, runs: runsInOrder(rows, order) };
    },
  }),
  defineEntry({
    id: 'statistics.fractional-factorial',
    title: 'Two-level fractional factorial design by generators',
    equation: 'n = 2^{k-p}',
    inputs: [{ ...FACTOR_COUNT, min: 2, max: 15 }, GENERATORS, ORDER],
    outputs: [
      RUN_COUNT,
      RUNS,
      {
        key: 'definingRelation',
        title: 'words equal to the identity, with their sign',
        kind: 'text',
        list: { min: 0, max: 8191 },
      },
      { key: 'resolution', title: 'length of the shortest word', kind: 'integer', unit: '1', min: 1, optional: true },
      {
        key: 'aliases',
        title: 'what each effect of up to two factors cannot be told from, among effects of up to three',
        kind: 'group',
        list: { min: 1, max: 200 },
        fields: [
          { key: 'effect', title: 'effect', kind: 'text' },
          { key: 'aliases', title: 'its aliases', kind: 'text', list: { min: 0, max: 600 } },
        ],
      },
    ],
    sources: [TEXTBOOK],
    validity: `${CODED} Factors are A, B, C ... without I; generators use base factors only. An effect found is the sum of its whole chain of aliases.`,
    restsOn: 'multiplication of columns of signs',
    compute: ({ factorCount, generators, order }) => {
      const { rows, aliases, ...words } = fromStats(() => fractionalFactorial({ factorCount, generators }));
      return { runCount: rows.length, runs: runsInOrder(rows, order), ...words, aliases };
    },
  }),
  defineEntry({
    id: 'statistics.central-composite',
    title: 'Central composite design',
    equation:
      '\\alpha = F^{1/4} \\text{ (rotatable)},\\quad 1 \\text{ (face-centred)},\\quad \\sqrt{k} \\text{ (spherical)}',
    inputs: [
      { ...FACTOR_COUNT, min: 2, max: 10 },
      {
        key: 'axial',
        title: 'choice of the axial distance',
        kind: 'choice',
        choices: ['rotatable', 'face-centred', 'spherical'],
      },
      CENTRE_COUNT,
      {
        ...GENERATORS,
        title: 'generators of a fraction of the corner points, of resolution 5 or more',
        optional: true,
      },
      ORDER,
    ],
    outputs: [
      RUN_COUNT,
      RUNS,
      { key: 'alpha_ratio', title: 'axial distance in coded units', kind: 'number', unit: '1' },
      { ...LOG_DETERMINANT, optional: true },
      D_EFFICIENCY,
    ],
    sources: [
      { text: 'G. E. P. Box, J. S. Hunter (1957), Ann. Math. Statist. 28, 195-241: F^(1/4)', read: 'from memory' },
    ],
    validity: `${CODED} Axial points lie outside them unless face-centred: check that the machine can be set there. Determinant and efficiency are for the full quadratic.`,
    restsOn: 'definition',
    compute: ({ factorCount, axial, centreCount, generators = [], order }) =>
      fromStats(() => {
        const { rows, alpha } = centralComposite({ factorCount, axial, centreCount, generators });
        const { runCount, runs, ...quality } = described(rows, order);
        return { runCount, runs, alpha_ratio: alpha, ...quality };
      }),
  }),
  defineEntry({
    id: 'statistics.box-behnken',
    title: 'Box-Behnken design',
    equation: 'n = 12, 24, 40, 48, 56 + n_0 \\text{ for } k = 3, 4, 5, 6, 7',
    inputs: [{ ...FACTOR_COUNT, min: 3, max: 7 }, CENTRE_COUNT, ORDER],
    outputs: [RUN_COUNT, RUNS, { ...LOG_DETERMINANT, optional: true }, D_EFFICIENCY],
    sources: [{ text: 'G. E. P. Box, D. W. Behnken (1960), Technometrics 2, 455-475, table 4', read: 'from memory' }],
    validity: `${CODED} No corner of the region is run. Determinant and efficiency are for the full quadratic, which needs a centre point.`,
    restsOn: 'definition',
    compute: ({ factorCount, centreCount, order }) =>
      fromStats(() => described(boxBehnken({ factorCount, centreCount }), order)),
  }),
  defineEntry({
    id: 'statistics.design-efficiency',
    title: 'D-efficiency of a design',
    equation: 'D = \\frac{\\operatorname{det}(X^T X)^{1/p}}{n}',
    inputs: [RUNS, MODEL],
    outputs: [
      { key: 'isEstimable', title: 'every term can be estimated', kind: 'flag' },
      {
        key: 'dependentTerms',
        title: 'terms that cannot be told from those before them',
        kind: 'text',
        list: { min: 0, max: 100 },
      },
      { ...LOG_DETERMINANT, optional: true },
      D_EFFICIENCY,
    ],
    sources: [TEXTBOOK],
    validity: `${CODED} Compares designs over the same coded region only.`,
    restsOn: 'pivoted QR decomposition of the model matrix',
    compute: ({ runs, model }) => {
      const rows = runs.map(({ levels_ratio }) => levels_ratio);
      const found = fromStats(() => designEfficiency({ rows, model }));
      const { isEstimable, dependentTerms, logDeterminant, dEfficiency } = found;
      return {
        ...{ isEstimable, dependentTerms, dEfficiency_ratio: dEfficiency },
        ...present({ logDeterminant_ratio: logDeterminant }),
      };
    },
  }),
  defineEntry({
    id: 'statistics.d-optimal-design',
    title: 'Exact D-optimal design under a list of candidates',
    equation: '\\text{largest }\\operatorname{det}(X^T X)',
    inputs: [
      { ...FACTOR_COUNT, max: 8 },
      MODEL,
      { ...RUN_COUNT, max: 200 },
      {
        key: 'levelCount',
        title: 'levels per factor of the grid',
        kind: 'integer',
        unit: '1',
        min: 2,
        max: 11,
        optional: true,
      },
      {
        key: 'candidates',
        title: 'runs that are possible, in place of the grid',
        kind: 'group',
        fields: [LEVELS],
        list: { min: 1, max: 20000 },
        optional: true,
      },
      { ...SEED, optional: true },
      {
        key: 'startCount',
        title: 'most starts of the search',
        kind: 'integer',
        unit: '1',
        min: 1,
        max: 20000,
        optional: true,
      },
    ],
    outputs: [
      RUNS,
      LOG_DETERMINANT,
      D_EFFICIENCY,
      { key: 'isProved', title: 'every choice of runs was tried', kind: 'flag' },
      { key: 'startCount', title: 'starts made', kind: 'integer', unit: '1' },
      { key: 'hitCount', title: 'starts that ended at a design as good', kind: 'integer', unit: '1' },
    ],
    sources: [
      { text: 'V. V. Fedorov, Theory of Optimal Experiments (Academic Press, 1972): exchange', read: 'from memory' },
    ],
    validity: `${CODED} Best for the model named and no other; a design with as many runs as terms shows no lack of fit. Without proof it is the best of the starts. Grid of 3 levels unless said otherwise.`,
    restsOn: 'enumeration up to 60,000 choices, else exchange from seeded starts; runs may repeat',
    compute: ({ factorCount, model, runCount, levelCount = 3, candidates, ...search }) =>
      fromStats(() => {
        const given = candidates?.map(({ levels_ratio }) => levels_ratio);
        const found = dOptimal({
          candidates: given ?? gridCandidates({ factorCount, levelCount }),
          ...{ model, runCount, ...search },
        });
        return {
          ...{ runs: runsInOrder(found.rows), isProved: found.isProved },
          ...{ startCount: found.startCount, hitCount: found.hitCount },
          ...{ logDeterminant_ratio: found.logDeterminant, dEfficiency_ratio: found.dEfficiency },
        };
      }),
  }),
];

/** A design for a quadratic model with its figures of merit. */
function described(rows: readonly (readonly number[])[], order: 'standard' | 'sorted' | undefined) {
  const { logDeterminant, dEfficiency } = designEfficiency({ rows, model: 'quadratic' });
  return {
    ...{ runCount: rows.length, runs: runsInOrder(rows, order), dEfficiency_ratio: dEfficiency },
    ...present({ logDeterminant_ratio: logDeterminant }),
  };
}

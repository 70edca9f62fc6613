import { expressionModel, nonlinearFit } from '@fillwright/stats/designs';
import { defineEntry, DomainError, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { RESPONSES, SEED } from './fields.ts';
import { present } from './present.ts';

const number = { kind: 'number', optional: true } as const;
const ENDS = ['converged', 'not-finite-at-start', 'too-many-rounds', 'stuck', 'singular'] as const;

/** Entry of nonlinear least squares. */
export const nonlinear: readonly Entry[] = [
  defineEntry({
    id: 'statistics.nonlinear-regression',
    title: 'Nonlinear least squares from several starts',
    equation: 'y_i = f(x_i, b) + e_i,\\quad \\sum_i e_i^2\\text{ least}',
    inputs: [
      { key: 'formula', title: 'formula f, such as b1*(1-exp(-b2*x))', kind: 'text' },
      { key: 'parameterNames', title: 'names of the parameters b', kind: 'text', list: { min: 1, max: 20 } },
      {
        key: 'variables',
        title: 'variables x',
        kind: 'group',
        list: { min: 1, max: 10 },
        fields: [
          { key: 'name', title: 'name in the formula', kind: 'text' },
          { key: 'values_data', title: 'one value per run', kind: 'number', unit: 'data', list: { min: 1, max: 5000 } },
        ],
      },
      { ...RESPONSES, list: { min: 1, max: 5000 } },
      {
        key: 'starts',
        title: 'starts of the search',
        kind: 'group',
        list: { min: 1, max: 100 },
        fields: [
          {
            key: 'values_data',
            title: 'one value per parameter',
            kind: 'number',
            unit: 'data',
            list: { min: 1, max: 20 },
          },
        ],
      },
      {
        key: 'extraStartCount',
        title: 'further starts, those given times random factors from 0.1 to 10',
        kind: 'integer',
        unit: '1',
        min: 0,
        max: 200,
        optional: true,
      },
      { ...SEED, optional: true },
      {
        key: 'confidence_frac',
        title: 'confidence of the intervals',
        kind: 'number',
        unit: '1',
        above: 0,
        below: 1,
        optional: true,
      },
    ],
    outputs: [
      { key: 'isConverged', title: 'a start ended at a least sum of squares', kind: 'flag' },
      {
        key: 'parameters',
        title: 'parameters',
        kind: 'group',
        list: { min: 1, max: 20 },
        optional: true,
        fields: [
          { key: 'name', title: 'name', kind: 'text' },
          { key: 'estimate_data', title: 'estimate', kind: 'number', unit: 'data' },
          { key: 'standardError_data', title: 'standard error', unit: 'data', ...number },
          { key: 'lower_data', title: 'lower end of the interval', unit: 'data', ...number },
          { key: 'upper_data', title: 'upper end of the interval', unit: 'data', ...number },
        ],
      },
      { key: 'residualSumOfSquares_data2', title: 'residual sum of squares', unit: 'data2', ...number },
      { key: 'residualSd_data', title: 'residual standard deviation', unit: 'data', ...number },
      { key: 'degreesOfFreedom', title: 'residual degrees of freedom', kind: 'integer', unit: '1' },
      { key: 'condition_ratio', title: 'condition number of the derivatives at the end', unit: '1', ...number },
      { key: 'agreeingCount', title: 'starts that ended there', kind: 'integer', unit: '1' },
      { key: 'worseCount', title: 'starts that ended at a larger sum of squares', kind: 'integer', unit: '1' },
      {
        key: 'startReports',
        title: 'how each start ended',
        kind: 'group',
        list: { min: 1, max: 300 },
        fields: [
          { key: 'end', title: 'end', kind: 'choice', choices: ENDS },
          { key: 'roundCount', title: 'rounds', kind: 'integer', unit: '1' },
          { key: 'sumOfSquares_data2', title: 'sum of squares there', unit: 'data2', ...number },
        ],
      },
    ],
    sources: [
      {
        text: 'J. J. Moré (1978), Lecture Notes in Mathematics 630: Levenberg-Marquardt, scaling',
        read: 'from memory',
      },
      {
        text: 'D. M. Bates, D. G. Watts, Nonlinear Regression Analysis (Wiley, 1988): linearised intervals',
        read: 'from memory',
      },
    ],
    validity:
      'The least minimum found from the starts, not proved to be the least there is: give several. Intervals hold where the model is nearly straight over them; confidence 0.95 unless given.',
    restsOn: 'exact derivatives of the formula, which is read and never executed',
    compute: (given) => {
      const { formula, parameterNames, variables, responses_data, starts, confidence_frac, ...search } = given;
      if (variables.some(({ values_data }) => values_data.length !== responses_data.length))
        throw new DomainError('out-of-range', { reason: 'wrong-length', responseCount: responses_data.length });
      const found = fromStats(() => {
        const model = expressionModel({
          ...{ formula, parameters: parameterNames, variables: variables.map(({ name }) => name) },
          rows: responses_data.map((_, run) => variables.map(({ values_data }) => values_data[run]!)),
        });
        return nonlinearFit({
          ...{ model, responses: responses_data, starts: starts.map(({ values_data }) => values_data), ...search },
          ...present({ confidence: confidence_frac }),
        });
      });
      return {
        ...{ isConverged: found.isConverged, degreesOfFreedom: found.degreesOfFreedom },
        ...{ agreeingCount: found.agreeingCount, worseCount: found.worseCount },
        ...present({
          parameters: found.parameters?.map(({ estimate, standardError, lower, upper }, k) => ({
            ...{ name: parameterNames[k]!, estimate_data: estimate },
            ...present({ standardError_data: standardError, lower_data: lower, upper_data: upper }),
          })),
          ...{ residualSumOfSquares_data2: found.residualSumOfSquares, residualSd_data: found.residualSd },
          condition_ratio: found.condition,
        }),
        startReports: found.starts.map(({ end, roundCount, sumOfSquares }) => ({
          ...{ end, roundCount, ...present({ sumOfSquares_data2: sumOfSquares }) },
        })),
      };
    },
  }),
];

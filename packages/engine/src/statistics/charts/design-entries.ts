import {
  cusumDecisionInterval,
  cusumDesign,
  ewmaDesign,
  ewmaDesignMap,
  ewmaLimitFactor,
} from '@fillwright/stats/charts';
import { defineEntry, type Entry } from '#catalogue';
import {
  DECISION_INTERVAL,
  HEAD_START,
  IN_CONTROL_RUN_LENGTH,
  INTEGRAL_EQUATION,
  LAMBDA,
  LIMIT_FACTOR,
  NORMAL_POINTS,
  REFERENCE,
  RUN_LENGTH,
  SHIFT,
} from './fields.ts';
import { fromStats } from '../from-stats.ts';

const AT_SHIFT = { ...RUN_LENGTH, title: 'mean run length at the shift' } as const;

/** Charts for a wanted run length. */
export const designEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.ewma-limit-factor',
    title: 'Limits of an EWMA chart for a wanted run length in control',
    equation: 'ARL(\\lambda, L, 0) = ARL_0',
    inputs: [LAMBDA, { ...IN_CONTROL_RUN_LENGTH, min: 2 }],
    outputs: [LIMIT_FACTOR],
    sources: [INTEGRAL_EQUATION],
    validity: `${NORMAL_POINTS} Constant limits, fresh chart.`,
    restsOn: 'root of the entry on the run length',
    compute: ({ lambda_frac, inControlRunLength }) => ({
      limitFactor_ratio: fromStats(() => ewmaLimitFactor({ lambda: lambda_frac, inControlRunLength })),
    }),
  }),
  defineEntry({
    id: 'statistics.ewma-design',
    title: 'The EWMA chart that finds a shift soonest',
    equation: '\\operatorname{min}_{\\lambda} ARL(\\lambda, L, \\delta)\\ \\text{with}\\ ARL(\\lambda, L, 0) = ARL_0',
    inputs: [{ ...SHIFT, min: 0.1, max: 5 }, IN_CONTROL_RUN_LENGTH],
    outputs: [LAMBDA, LIMIT_FACTOR, AT_SHIFT],
    sources: [{ text: 'S. V. Crowder, J. Qual. Technol. 21 (1989) 155-162', read: 'from memory' }],
    validity: `${NORMAL_POINTS} Constant limits. The valley is flat: a round lambda nearby does as well.`,
    restsOn: 'golden section over log lambda, 0.01 to 1',
    compute: ({ shift_ratio, inControlRunLength }) => {
      const { lambda, limitFactor, runLength } = fromStats(() =>
        ewmaDesign({ shift: shift_ratio, inControlRunLength }),
      );
      return { lambda_frac: lambda, limitFactor_ratio: limitFactor, meanRunLength: runLength };
    },
  }),
  defineEntry({
    id: 'statistics.ewma-design-map',
    title: 'Run lengths of EWMA charts over lambda and width of the limits',
    equation: 'ARL(\\lambda, L, 0),\\quad ARL(\\lambda, L, \\delta)',
    inputs: [
      { ...LAMBDA, key: 'lambdas_frac', title: 'weights, rising', min: 0.02, list: { min: 1, max: 200 } },
      {
        ...LIMIT_FACTOR,
        key: 'limitFactors_ratio',
        title: 'widths, rising',
        min: 1,
        max: 5,
        list: { min: 1, max: 200 },
      },
      { ...SHIFT, min: -5, max: 5 },
    ],
    outputs: [
      {
        key: 'rows',
        title: 'one row per weight',
        kind: 'group',
        list: { min: 1, max: 200 },
        fields: [
          { ...IN_CONTROL_RUN_LENGTH, key: 'inControlRunLengths', title: 'in control', list: { min: 1, max: 200 } },
          { ...IN_CONTROL_RUN_LENGTH, key: 'atShiftRunLengths', title: 'at the shift', list: { min: 1, max: 200 } },
        ],
      },
    ],
    sources: [INTEGRAL_EQUATION],
    validity: `${NORMAL_POINTS} Constant limits. Between solved points log ARL is interpolated, relative error below 1e-6.`,
    restsOn: 'the entry on the run length',
    compute: ({ lambdas_frac, limitFactors_ratio, shift_ratio }) => {
      const map = fromStats(() =>
        ewmaDesignMap({ lambdas: lambdas_frac, limitFactors: limitFactors_ratio, shift: shift_ratio }),
      );
      const columns = limitFactors_ratio.length;
      const row = (values: Float64Array, i: number): number[] => [...values.subarray(i * columns, (i + 1) * columns)];
      return {
        rows: lambdas_frac.map((_, i) => ({
          ...{ inControlRunLengths: row(map.inControl, i), atShiftRunLengths: row(map.atShift, i) },
        })),
      };
    },
  }),
  defineEntry({
    id: 'statistics.cusum-decision-interval',
    title: 'Decision interval of a CUSUM chart for a wanted run length in control',
    equation: 'ARL(k, h, 0) = ARL_0',
    inputs: [{ ...REFERENCE, min: 0.05, max: 3 }, IN_CONTROL_RUN_LENGTH, HEAD_START],
    outputs: [DECISION_INTERVAL],
    sources: [INTEGRAL_EQUATION],
    validity: NORMAL_POINTS,
    restsOn: 'root of the entry on the run length',
    compute: ({ reference_ratio, inControlRunLength, headStart_frac = 0 }) => ({
      decisionInterval_ratio: fromStats(() =>
        cusumDecisionInterval({ reference: reference_ratio, inControlRunLength, headStart_frac }),
      ),
    }),
  }),
  defineEntry({
    id: 'statistics.cusum-design',
    title: 'The CUSUM chart that finds a shift soonest',
    equation: '\\operatorname{min}_{k} ARL(k, h, \\delta)\\ \\text{with}\\ ARL(k, h, 0) = ARL_0',
    inputs: [{ ...SHIFT, min: 0.2, max: 4 }, IN_CONTROL_RUN_LENGTH],
    outputs: [REFERENCE, DECISION_INTERVAL, AT_SHIFT],
    sources: [{ text: 'classical rule k = delta/2, here found by search', read: 'from memory' }],
    validity: `${NORMAL_POINTS} Sums start at 0.`,
    restsOn: 'golden section over the reference value',
    compute: ({ shift_ratio, inControlRunLength }) => {
      const found = fromStats(() => cusumDesign({ shift: shift_ratio, inControlRunLength }));
      return {
        ...{ reference_ratio: found.reference, decisionInterval_ratio: found.decisionInterval },
        meanRunLength: found.runLength,
      };
    },
  }),
];

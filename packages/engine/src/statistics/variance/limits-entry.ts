import { meanSquareLimits } from '@fillwright/stats/variance';
import { defineEntry, DomainError, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { CONFIDENCE, GRAYBILL_WANG, TING } from './fields.ts';

const MANY = { min: 1, max: 100 } as const;
const SQUARE = { kind: 'number', unit: 'data2' } as const;

export const limitsEntry: Entry = defineEntry({
  id: 'statistics.mean-square-limits',
  title: 'Limits of a sum or difference of mean squares',
  equation:
    'V = \\sum_i c_i M_i,\\quad V \\pm \\sqrt{\\sum_i H_i^2 c_i^2 M_i^2},\\quad H_i = \\frac{\\nu_i}{\\chi^2_{\\nu_i}}-1',
  inputs: [
    { key: 'meanSquares_data2', title: 'mean squares M_i', ...SQUARE, min: 0, list: MANY },
    {
      key: 'coefficients_ratio',
      title: 'coefficients c_i, of any sign but not 0',
      kind: 'number',
      unit: '1',
      list: MANY,
    },
    {
      key: 'degreesOfFreedom',
      title: 'degrees of freedom ν_i',
      kind: 'integer',
      unit: '1',
      min: 1,
      max: 1e9,
      list: MANY,
    },
    CONFIDENCE,
  ],
  outputs: [
    { key: 'estimate_data2', title: 'variance V; may be negative', ...SQUARE },
    { key: 'low_data2', title: 'lower limit, two-sided, not below 0', ...SQUARE },
    { key: 'high_data2', title: 'upper limit, two-sided, not below 0', ...SQUARE },
  ],
  sources: [GRAYBILL_WANG, TING],
  validity:
    'Independent mean squares, groups of one size. With coefficients of both signs products of the terms stand under the root too (Ting et al.). Exact for one term; a one-sided limit of 95 % is that of a confidence of 0.9.',
  restsOn: 'normal values; variances of heavy-tailed values spread more',
  compute: ({ meanSquares_data2, coefficients_ratio, degreesOfFreedom, confidence_frac: confidence = 0.95 }) =>
    fromStats(() => {
      const termCount = meanSquares_data2.length;
      if (coefficients_ratio.length !== termCount || degreesOfFreedom.length !== termCount)
        throw new DomainError('out-of-range', {
          ...{ reason: 'wrong-length', termCount },
          ...{ coefficientCount: coefficients_ratio.length, degreesOfFreedomCount: degreesOfFreedom.length },
        });
      const terms = meanSquares_data2.map((meanSquare, i) => ({
        ...{ meanSquare, coefficient: coefficients_ratio[i]!, degreesOfFreedom: degreesOfFreedom[i]! },
      }));
      const { estimate, low, high } = meanSquareLimits({ terms, confidence });
      return { estimate_data2: estimate, low_data2: low, high_data2: high };
    }),
});

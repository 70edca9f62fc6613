import { globalRisks, guardedAcceptance } from '@fillwright/stats/conformity';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { openLimits, TOLERANCE } from './fields.ts';

const SHARE = { kind: 'number', unit: '1' } as const;
const DATA = { kind: 'number', unit: 'data' } as const;

/** Decisions on what is measured with an uncertainty. */
export const guardEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.guarded-acceptance',
    title: 'A measured value against limits drawn in by a guard band',
    equation: 'T_L+w \\le y \\le T_U-w,\\quad w = r\\,k\\,u',
    inputs: [
      { key: 'measured_data', title: 'measured value y', ...DATA },
      { key: 'uncertainty_data', title: 'standard uncertainty u', ...DATA, above: 0 },
      ...TOLERANCE,
      { key: 'coverage_ratio', title: 'coverage factor k; 2 unless given', ...SHARE, above: 0, optional: true },
      { key: 'guard_ratio', title: 'guard band r as a share of k u; 1 unless given', ...SHARE, optional: true },
    ],
    outputs: [
      { key: 'conformance_frac', title: 'probability that the true value is inside the tolerance', ...SHARE },
      { key: 'specificRisk_frac', title: 'probability that it is outside', ...SHARE },
      { key: 'acceptanceLow_data', title: 'lower acceptance limit', ...DATA, optional: true },
      { key: 'acceptanceHigh_data', title: 'upper acceptance limit', ...DATA, optional: true },
      { key: 'isAccepted', title: 'accepted', kind: 'flag' },
    ],
    sources: [{ text: 'JCGM 106:2012, clauses 7 and 8', read: 'from memory' }],
    validity:
      'Normal measurement error; nothing known beforehand of the value. Crossed acceptance limits accept nothing.',
    restsOn: 'the standard uncertainty of the one measurement',
    compute: (raw) =>
      fromStats(() => {
        const found = guardedAcceptance({
          ...{ measured: raw.measured_data, standardUncertainty: raw.uncertainty_data },
          ...{ coverage: raw.coverage_ratio ?? 2, guard: raw.guard_ratio ?? 1 },
          tolerance: openLimits({ low: raw.toleranceLow_data, high: raw.toleranceHigh_data }),
        });
        return {
          ...{ conformance_frac: found.conformance, specificRisk_frac: found.specificRisk },
          ...(found.acceptanceLow === undefined ? {} : { acceptanceLow_data: found.acceptanceLow }),
          ...(found.acceptanceHigh === undefined ? {} : { acceptanceHigh_data: found.acceptanceHigh }),
          isAccepted: found.isAccepted,
        };
      }),
  }),
  defineEntry({
    id: 'statistics.global-risks',
    title: "Consumer's and producer's risk of a measured decision over a production",
    equation:
      'P(X\\,\\text{outside},\\,Y\\,\\text{inside}),\\quad P(X\\,\\text{inside},\\,Y\\,\\text{outside}),\\quad Y = X+e',
    inputs: [
      { key: 'mean_data', title: 'mean of the true values X', ...DATA },
      { key: 'sd_data', title: 'standard deviation of the true values', ...DATA, above: 0 },
      { key: 'uncertainty_data', title: 'standard uncertainty of the measurement', ...DATA, min: 0 },
      ...TOLERANCE,
      { key: 'guardBand_data', title: 'guard band w inside the tolerance; 0 unless given', ...DATA, optional: true },
    ],
    outputs: [
      { key: 'consumerRisk_frac', title: 'outside the tolerance and accepted, of all', ...SHARE },
      { key: 'producerRisk_frac', title: 'inside the tolerance and rejected, of all', ...SHARE },
      { key: 'accepted_frac', title: 'accepted', ...SHARE },
      { key: 'conforming_frac', title: 'inside the tolerance', ...SHARE },
    ],
    sources: [{ text: 'JCGM 106:2012, clause 9', read: 'from memory' }],
    validity: 'Normal true values, normal measurement error independent of them. Absolute error below 1e-12.',
    restsOn: 'one integral over the true value',
    compute: (raw) =>
      fromStats(() => {
        const found = globalRisks({
          ...{ mean: raw.mean_data, sd: raw.sd_data, standardUncertainty: raw.uncertainty_data },
          tolerance: openLimits({ low: raw.toleranceLow_data, high: raw.toleranceHigh_data }),
          guardBand: raw.guardBand_data ?? 0,
        });
        return {
          ...{ consumerRisk_frac: found.consumerRisk, producerRisk_frac: found.producerRisk },
          ...{ accepted_frac: found.accepted, conforming_frac: found.conforming },
        };
      }),
  }),
];

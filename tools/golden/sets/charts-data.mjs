import { renamedFields } from '../renamed-fields.mjs';

const NAMES = {
  grand_mean: 'grandMean_data',
  r_bar: 'meanRange_data',
  s_bar: 'meanSd_data',
  pooled_s: 'pooledSd_data',
  sigma_r: 'sigma_data',
  sigma_s: 'sigma_data',
  mean: 'mean_data',
  mr_bar: 'meanMovingRange_data',
  sigma: 'sigma_data',
  overall_s: 'overallSd_data',
  xbar_R: 'means',
  R_chart: 'ranges',
  xbar_S: 'means',
  S_chart: 'sds',
  lcl: 'lower_data',
  ucl: 'upper_data',
  c_plus: 'upperSums_data',
  c_minus: 'lowerSums_data',
  shifted_mean_estimate: 'shiftedMean_data',
  z: 'averages_data',
  asymptotic_half_width: 'finalHalfWidth_data',
};

/** Charts on data; a chart of subgroups is checked once by ranges and once by standard deviations. */
export function cases(given) {
  const tolerance = renamedFields(given.tolerance, NAMES);
  return (CHARTS[given.inputs.chart]?.(given) ?? []).map((one) => ({ ...one, tolerance }));
}

const CHARTS = { xbar, 'I-MR': individuals, CUSUM: cusum, EWMA: ewma };
const band = ({ lcl, ucl }) => ({ lower_data: lcl, upper_data: ucl });
const start = ({ series, target, sigma }) => ({ values_data: series, target_data: target, sigma_data: sigma });

function xbar({ inputs, expected }) {
  const subgroups = inputs.subgroups.map((values) => ({ values_data: values }));
  const ofEach = { means: band(expected.xbar_S), sds: band(expected.S_chart) };
  return [
    {
      part: 'ranges',
      method: 'statistics.mean-and-range-limits',
      inputs: { subgroups },
      expected: {
        ...{ grandMean_data: expected.grand_mean, meanRange_data: expected.r_bar, sigma_data: expected.sigma_r },
        ...{ means: band(expected.xbar_R), ranges: band(expected.R_chart) },
      },
    },
    {
      part: 'sds',
      method: 'statistics.mean-and-sd-limits',
      inputs: { subgroups },
      expected: {
        ...{ grandMean_data: expected.grand_mean, meanSd_data: expected.s_bar, pooledSd_data: expected.pooled_s },
        ...{ sigma_data: expected.sigma_s, perSubgroup: subgroups.map(() => ofEach) },
      },
    },
  ];
}

function individuals({ inputs, expected }) {
  return [
    {
      method: 'statistics.individuals-limits',
      inputs: { values_data: inputs.series },
      expected: {
        ...{ mean_data: expected.mean, meanMovingRange_data: expected.mr_bar, sigma_data: expected.sigma },
        ...{ overallSd_data: expected.overall_s, individuals: band(expected) },
        movingRanges: { lower_data: expected.mr_lcl, upper_data: expected.mr_ucl },
      },
    },
  ];
}

function cusum({ inputs, expected }) {
  return [
    {
      method: 'statistics.cusum-chart',
      inputs: {
        ...start(inputs),
        ...{
          reference_ratio: inputs.k,
          decisionInterval_ratio: inputs.h,
          headStart_frac: inputs.headstart_fraction ?? 0,
        },
      },
      expected: {
        ...{ upperSums_data: expected.c_plus, lowerSums_data: expected.c_minus },
        ...{ upperRuns: expected.n_plus, lowerRuns: expected.n_minus },
        ...{ firstSignal: expected.first_signal ?? null, shiftedMean_data: expected.shifted_mean_estimate ?? null },
      },
    },
  ];
}

function ewma({ inputs, expected }) {
  return [
    {
      method: 'statistics.ewma-chart',
      inputs: { ...start(inputs), lambda_frac: inputs.lam, limitFactor_ratio: inputs.L },
      expected: {
        ...{ averages_data: expected.z, lower_data: expected.lcl, upper_data: expected.ucl },
        ...{ firstSignal: expected.first_signal ?? null, finalHalfWidth_data: expected.asymptotic_half_width },
      },
    },
  ];
}

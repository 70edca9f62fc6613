import { complete } from '../check-of.mjs';

const METHODS = {
  'misclassification by gross limits': {
    method: 'gross-misclassification',
    names: {
      ...{ sdGross_data: 'sigma_gross', correlationNetGross_ratio: 'correlation_net_gross' },
      ...{
        netInside_frac: 'p_net_inside',
        grossAccepted_frac: 'p_gross_accepted',
        goodAccepted_frac: 'p_good_accepted',
      },
      ...{ falseAccept_frac: 'false_accept', falseReject_frac: 'false_reject' },
      badAmongAccepted_frac: 'share_bad_among_accepted',
    },
  },
  'net given gross': {
    method: 'net-given-gross',
    names: {
      ...{ mean_data: 'mean', sd_data: 'sd', inside_frac: 'p_inside' },
      ...{ plainEstimate_data: 'naive_estimate', plainInside_frac: 'naive_p_inside' },
    },
  },
  'gross half-width for a false-accept target': {
    method: 'gross-half-width',
    names: { halfWidth_data: 'half_width', falseReject_frac: 'false_reject', grossAccepted_frac: 'p_gross_accepted' },
  },
  'guarded acceptance': {
    method: 'guarded-acceptance',
    names: {
      ...{ conformance_frac: 'conformance_probability', isAccepted: 'accepted' },
      ...{ acceptanceLow_data: 'acceptance_low', acceptanceHigh_data: 'acceptance_high' },
    },
  },
  'global risks': {
    method: 'global-risks',
    names: {
      ...{ consumerRisk_frac: 'consumer_risk', producerRisk_frac: 'producer_risk' },
      ...{ accepted_frac: 'p_accept', conforming_frac: 'p_conform' },
    },
  },
  'net variance from separate samples': {
    method: 'net-variance-from-samples',
    names: {
      ...{ meanNet_data: 'mean_net', varianceGross_data2: 'var_gross', varianceShell_data2: 'var_shell' },
      ...{ varianceNet_data2: 'var_net', standardError_data2: 'var_net_se', sdNet_data: 'sd_net' },
    },
  },
  'net variance from pairs': {
    method: 'net-variance-from-pairs',
    names: {
      ...{ meanNet_data: 'mean_net', varianceNet_data2: 'var_net', varianceGross_data2: 'var_gross' },
      ...{ varianceShell_data2: 'var_shell', covariance_data2: 'cov_gross_shell' },
      ...{ plainDifference_data2: 'naive_difference', correlationNetShell_ratio: 'correlation_net_shell' },
    },
  },
};

/** Keys of the inputs by their names in the set. */
const INPUTS = {
  ...{ mean_net: 'meanNet_data', sd_net: 'sdNet_data', mean_shell: 'meanShell_data', sd_shell: 'sdShell_data' },
  ...{ sd_weighing: 'sdWeighing_data', net_low: 'netLow_data', net_high: 'netHigh_data' },
  ...{ gross_low: 'grossLow_data', gross_high: 'grossHigh_data', gross: 'gross_data', shells: 'shells_data' },
  ...{ y: 'measured_data', u: 'uncertainty_data', u_m: 'uncertainty_data', k: 'coverage_ratio', r: 'guard_ratio' },
  ...{ tol_low: 'toleranceLow_data', tol_high: 'toleranceHigh_data', guard_band: 'guardBand_data' },
  ...{ prior_mean: 'mean_data', prior_sd: 'sd_data' },
};

export function cases(given) {
  const { what, false_accept_ppm: ppm, ...rest } = given.inputs;
  const known = METHODS[what];
  if (!known || Object.keys(rest).some((name) => INPUTS[name] === undefined)) return [];
  const pairs = Object.entries(rest).filter(([, value]) => value !== null);
  const inputs = Object.fromEntries(pairs.map(([name, value]) => [INPUTS[name], value]));
  if (ppm !== undefined) inputs.falseAccept_frac = ppm / 1e6;
  // An open side or a spread that does not exist is null in the set: nothing is given, nothing is expected.
  const expected = Object.fromEntries(Object.entries(given.expected).filter(([, value]) => value !== null));
  return complete({ ...given, expected }, [{ method: `statistics.${known.method}`, inputs, names: known.names }]);
}

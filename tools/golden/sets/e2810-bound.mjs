/** The bound at known mean and sd, the bound that a sample gives with its region, and acceptance limits. */
export function cases({ inputs, expected }) {
  switch (inputs.what) {
    case 'bound at known parameters':
      return [known(inputs, expected)];
    case 'bound for a sample':
      return [sample(inputs, expected)];
    case 'acceptance limit':
      return [limit(inputs, expected)];
    default:
      return [];
  }
}

function known({ mu, sigma, T }, { p_s1, p_c21, p_c22, bound }) {
  return {
    method: 'statistics.passing-bound',
    inputs: { mean_pct: mu, sd_pct: sigma, target_pct: T },
    expected: { stage1_frac: p_s1, acceptanceValueOf30_frac: p_c21, unitsOf30_frac: p_c22, bound_frac: bound },
  };
}

function sample({ mean, sd, n, confidence, T }, { z, sigma_upper, mu_low, mu_high, lower_bound }) {
  return {
    method: 'statistics.assurance-of-sample',
    inputs: { mean_pct: mean, sd_pct: sd, sampleCount: n, confidence_frac: confidence, target_pct: T },
    expected: {
      ...{ z_ratio: z, upperSd_pct: sigma_upper, lowMean_pct: mu_low, highMean_pct: mu_high },
      lowerBound_frac: lower_bound,
    },
  };
}

/** No limit (null) is a row without a value. */
function limit({ mean, n, confidence, coverage, T }, { max_sd }) {
  return {
    method: 'statistics.acceptance-limits',
    inputs: {
      ...{ means_pct: [mean], sampleCount: n, confidence_frac: confidence, coverage_frac: coverage, target_pct: T },
    },
    expected: { rows: [{ boundSd_pct: max_sd }] },
  };
}

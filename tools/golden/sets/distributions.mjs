/** The law of the catalogue, its variable, and its parameters under our keys. */
const LAWS = {
  normal: { id: 'normal', parameters: {} },
  t: { id: 'student', parameters: { df: 'degreesOfFreedom_ratio' } },
  chi2: { id: 'chi-square', parameters: { df: 'degreesOfFreedom_ratio' } },
  f: { id: 'fisher', parameters: { df1: 'numerator_ratio', df2: 'denominator_ratio' } },
  beta: { id: 'beta', variable: 'x_frac', parameters: { a: 'alpha_ratio', b: 'beta_ratio' } },
  gamma: { id: 'gamma', parameters: { shape: 'shape_ratio', scale: 'scale_ratio' } },
  noncentral_t: {
    id: 'noncentral-student',
    parameters: { df: 'degreesOfFreedom_ratio', ncp: 'noncentrality_ratio' },
  },
  studentized_range: {
    id: 'studentized-range',
    parameters: { groups: 'groupCount', df: 'degreesOfFreedom_ratio' },
  },
  binomial: { id: 'binomial', variable: 'count', parameters: { n: 'sampleCount', p: 'share_frac' } },
  hypergeometric: {
    id: 'hypergeometric',
    variable: 'count',
    parameters: { N: 'lotCount', K: 'defectiveCount', n: 'sampleCount' },
  },
  poisson: { id: 'poisson', variable: 'count', parameters: { mean: 'mean_ratio' } },
};

export function cases({ inputs, expected }) {
  const { dist, fn, params = {}, tail = 'lower' } = inputs;
  const law = LAWS[dist];
  if (!law || Object.keys(params).some((name) => !(name in law.parameters))) return [];
  const own = Object.fromEntries(Object.entries(params).map(([name, value]) => [law.parameters[name], value]));
  const variable = law.variable ?? 'x_ratio';
  if (fn === 'quantile') {
    const asked = { p_frac: inputs.p, tail, ...own };
    return [{ method: `statistics.${law.id}-quantile`, inputs: asked, expected: { [variable]: expected.value } }];
  }
  const output = { pmf: 'exactly_frac', sf: 'upper_frac', cdf: `${tail}_frac` }[fn];
  if (!output) return [];
  const point = { [variable]: inputs.x ?? inputs.k, ...own };
  return [{ method: `statistics.${law.id}-probability`, inputs: point, expected: { [output]: expected.value } }];
}

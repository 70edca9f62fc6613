import { complete } from '../check-of.mjs';

const T = { statistic_ratio: 't', degreesOfFreedom_ratio: 'df', p_frac: 'p', low_data: 'low', high_data: 'high' };
const method = (name) => `statistics.${name}`;
const confidence = ({ conf }) => (conf === undefined ? {} : { confidence_frac: conf });
const pairOf = ({ x, y, ...rest }) => ({ first_data: x, second_data: y, ...confidence(rest) });

/** What computes a case, by its kind. */
const KINDS = {
  'mean, one sample': (inputs) => [
    {
      method: method('one-sample-t'),
      inputs: { values_data: inputs.x, reference_data: inputs.mu, ...confidence(inputs) },
      names: { mean_data: 'mean', sd_data: 's', ...T, varianceLow_data2: 'var_low', varianceHigh_data2: 'var_high' },
    },
  ],
  'two samples, Welch': (inputs) => [
    { part: 'unequal', method: method('two-sample-t'), inputs: pairOf(inputs), names: T },
    {
      ...{ part: 'pooled', method: method('two-sample-t'), inputs: { ...pairOf(inputs), variances: 'equal' } },
      names: { statistic_ratio: 'pooled_t', p_frac: 'pooled_p' },
    },
    {
      ...{ part: 'variances', method: method('variance-ratio'), inputs: pairOf(inputs) },
      names: { statistic_ratio: 'F', p_frac: 'F_p' },
    },
  ],
  paired: (inputs) => [{ method: method('paired-t'), inputs: pairOf(inputs), names: T }],
  'proportion, Clopper-Pearson': (inputs) => {
    const asked = { count: inputs.x, sampleCount: inputs.n, ...confidence(inputs) };
    return [
      {
        ...{ part: 'exact', method: method('clopper-pearson'), inputs: asked },
        names: {
          ...{ estimate_frac: 'estimate', low_frac: 'low', high_frac: 'high' },
          upperOneSided_frac: 'upper_one_sided',
        },
      },
      {
        ...{ part: 'score', method: method('wilson'), inputs: asked },
        names: { low_frac: 'wilson_low', high_frac: 'wilson_high' },
      },
    ];
  },
  'count, Garwood': (inputs) => [
    {
      ...{ method: method('garwood'), inputs: { count: inputs.x, ...confidence(inputs) } },
      names: { low_ratio: 'low', high_ratio: 'high', upperOneSided_ratio: 'upper_one_sided' },
    },
  ],
  'Shapiro-Wilk': ({ x }) => [
    { method: method('shapiro-wilk'), inputs: { values_data: x }, names: { statistic_ratio: 'W', p_frac: 'p' } },
  ],
  'Grubbs critical value, two-sided': ({ n, alpha }) => [
    {
      ...{ method: method('grubbs-critical'), inputs: { unitCount: n, significance_frac: alpha } },
      names: { critical_ratio: 'G' },
    },
  ],
  'sum of variances, Satterthwaite': ({ ms, c, nu }) => [
    {
      method: method('satterthwaite'),
      inputs: { meanSquares_data2: ms, coefficients_ratio: c, degreesOfFreedom_ratio: nu },
      names: { estimate_data2: 'estimate', effective_ratio: 'df' },
    },
  ],
};

export function cases(given) {
  if (given.inputs.kind === 'Tukey simultaneous comparisons') return tukey(given);
  const checks = KINDS[given.inputs.kind]?.(given.inputs);
  return checks ? complete(given, checks) : [];
}

/** Lists side by side become one list of pairs. */
function tukey({ inputs, expected, tolerance = {} }) {
  const names = { difference_data: 'diff', low_data: 'low', high_data: 'high', p_frac: 'p' };
  if (Object.keys(expected).some((name) => !Object.values(names).includes(name))) return [];
  const { fields = {}, ...own } = tolerance;
  const special = Object.entries(names).filter(([, name]) => fields[name]);
  const comparisons = expected.diff.map((_, i) =>
    Object.fromEntries(Object.entries(names).map(([key, name]) => [key, expected[name][i]])),
  );
  return [
    {
      ...{ method: method('tukey-comparisons'), expected: { comparisons } },
      inputs: { groups: inputs.y.map((values_data) => ({ values_data })), ...confidence(inputs) },
      tolerance: { ...own, fields: Object.fromEntries(special.map(([key, name]) => [key, fields[name]])) },
    },
  ];
}

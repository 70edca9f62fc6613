import { complete } from '../check-of.mjs';

const FACTORS = {
  'normal one-sided': 'one-sided',
  'normal two-sided exact': 'two-sided',
  'normal two-sided Howe': 'howe',
  'normal two-sided exact, pooled SD': 'two-sided',
};

export function cases(given) {
  const { kind, n, df, content, confidence } = given.inputs;
  const asked = { content_frac: content, confidence_frac: confidence };
  const law = { unitCount: n, ...asked, ...(df === undefined ? {} : { degreesOfFreedom_ratio: df }) };
  const factor = (name, output, part) => ({
    ...{ part, method: `statistics.tolerance-factor-${name}`, inputs: law, names: { factor_ratio: output } },
  });
  if (kind in FACTORS) return complete(given, [factor(FACTORS[kind], 'k')]);
  if (kind === 'NIST example') return nist(given, factor);
  if (kind === 'nonparametric minimum n') return complete(given, [sizes(asked)]);
  if (kind === 'nonparametric at n') return complete(given, [free(law)]);
  if (kind === 'normal from data') return complete(given, [fromData(given.inputs.data, asked)]);
  return [];
}

function nist(given, factor) {
  const { mean, sd } = given.inputs;
  const inputs = { mean_data: mean, sd_data: sd, ...factor('howe').inputs, factors: 'approximate' };
  return complete(given, [
    factor('howe', 'k2_howe', 'howe'),
    factor('two-sided', 'k2_exact', 'two-sided'),
    factor('natrella', 'k1_natrella', 'natrella'),
    factor('one-sided', 'k1_exact', 'one-sided'),
    {
      ...{ part: 'limits', method: 'statistics.tolerance-limits', inputs },
      names: { low_data: 'lower2_howe', high_data: 'upper2_howe', upperOneSided_data: 'upper1_natrella' },
    },
  ]);
}

function sizes(inputs) {
  const names = { oneSidedCount: 'n_one_sided', leastToGreatestCount: 'n_two_sided_min_max' };
  return { method: 'statistics.tolerance-sample-size', inputs, names };
}

function free(inputs) {
  return {
    ...{ method: 'statistics.tolerance-distribution-free', inputs },
    names: {
      leastToGreatest_frac: 'confidence_min_max',
      oneSided_frac: 'confidence_one_sided',
      blocksOutsideCount: 'blocks_that_may_be_cut',
    },
  };
}

function fromData(values_data, asked) {
  return {
    ...{ method: 'statistics.tolerance-interval', inputs: { values_data, ...asked } },
    names: {
      ...{ mean_data: 'mean', sd_data: 's', low_data: 'lower_two', high_data: 'upper_two' },
      ...{ lowerOneSided_data: 'lower_one', upperOneSided_data: 'upper_one' },
    },
  };
}

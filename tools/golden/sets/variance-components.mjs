import { complete } from '../check-of.mjs';

const numbered = (items) => items.map((item, i) => [i + 1, item]);

const ONE_WAY = {
  ...{ betweenDf: 'df_between', withinDf: 'df_within', statistic_ratio: 'F', p_frac: 'p' },
  ...{ betweenSumOfSquares_data2: 'ss_between', withinSumOfSquares_data2: 'ss_within' },
  ...{ betweenMeanSquare_data2: 'ms_between', withinMeanSquare_data2: 'ms_within' },
  ...{ effectiveSize_ratio: 'n0', within_data2: 'var_within' },
  ...{ withinLow_data2: 'var_within_low', withinHigh_data2: 'var_within_high' },
  ...{ between_data2: 'var_between_anova', betweenTruncated_data2: 'var_between_truncated' },
  ...{ total_data2: 'total_variance', intraclass_ratio: 'icc' },
  ...{ intraclassLow_ratio: 'icc_low', intraclassHigh_ratio: 'icc_high' },
  totalUpper_data2: 'total_variance_upper_graybill_wang',
  ...{ remlBetween_data2: 'reml_between', remlWithin_data2: 'reml_within', criterion_ratio: 'reml_minus2loglik' },
  ...{ mean_data: 'mean', meanSe_data: 'mean_se' },
};

function oneWay(given) {
  const { groups, confidence } = given.inputs;
  const inputs = {
    groups: groups.map((values_data) => ({ values_data })),
    ...(confidence !== undefined && { confidence_frac: confidence }),
  };
  return complete(given, [{ method: 'statistics.one-way-components', inputs, names: ONE_WAY }]);
}

const TABLE = { degreesOfFreedom: 'df', sumsOfSquares_data2: 'ss', meanSquares_data2: 'ms' };

function nested(given) {
  const { tree } = given.inputs;
  const places = numbered(tree).flatMap(([groupCount, group]) =>
    group.map((values_data) => ({ groupCount, values_data })),
  );
  const parts = ['time', 'place', 'within'];
  const lists = {
    components: ['var_time_anova', 'var_place_anova', 'var_within'],
    reml: parts.map((name) => `reml_${name}`),
  };
  return complete(listed(given, lists), [
    {
      method: 'statistics.nested-components',
      inputs: { places },
      names: {
        ...{ ...TABLE, coefficients_ratio: 'coefficients', components_data2: 'components', reml_data2: 'reml' },
        ...{ criterion_ratio: 'reml_minus2loglik', mean_data: 'mean', meanSe_data: 'mean_se' },
      },
    },
  ]);
}

function crossed(given) {
  const cells = numbered(given.inputs.cells).flatMap(([rowCount, row]) =>
    numbered(row).map(([columnCount, values_data]) => ({ rowCount, columnCount, values_data })),
  );
  const { components_anova: components, ...rest } = given.expected;
  const names = ['time', 'station', 'interaction'];
  const lists = {
    F: names.map((name) => `F_${name}`),
    p: names.map((name) => `p_${name}`),
    components: [...names, 'within'],
  };
  return complete(listed({ ...given, expected: { ...rest, ...components } }, lists), [
    {
      method: 'statistics.crossed-components',
      inputs: { cells },
      names: {
        ...{ ...TABLE, statistics_ratio: 'F', p_frac: 'p', components_data2: 'components' },
        isReml: 'reml_equals_anova',
      },
    },
  ]);
}

/** Expected numbers that a method gives as one list, as a list; its tolerance is the strictest of theirs. */
function listed({ expected, tolerance = {}, ...given }, lists) {
  const [left, fields] = [{ ...expected }, { ...tolerance.fields }];
  for (const [key, names] of Object.entries(lists)) {
    if (names.some((name) => expected[name] === undefined)) continue;
    const own = names.map((name) => tolerance.fields?.[name] ?? tolerance);
    const least = (part) => Math.min(...own.map((one) => one[part] ?? 0));
    fields[key] = { rel: least('rel'), abs: least('abs') };
    left[key] = names.map((name) => expected[name]);
    for (const name of names) delete left[name];
  }
  return { ...given, expected: left, tolerance: { ...tolerance, fields } };
}

const KINDS = {
  'one-way random': oneWay,
  'nested random: time / place in time / within': nested,
  'crossed random: time x station x within': crossed,
};

/** Variance components, by model. */
export function cases(given) {
  return KINDS[given.inputs.model]?.(given) ?? [];
}

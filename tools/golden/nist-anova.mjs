import { checkOf } from './check-of.mjs';

/** Values as they stand, as digits of one number each, or by rule: a first one, then a pattern so many times. */
const valuesOf = ({ data, digits, data_rule: rule }) => data ?? (digits ? [...digits].map(Number) : byRule(rule));
const byRule = ({ first, then_repeat, times }) => [first, ...Array.from({ length: times }, () => then_repeat).flat()];

/** Mean and standard deviation, then the correlation of neighbours. */
export function univariate(given) {
  const inputs = { values_data: valuesOf(given.inputs) };
  return [
    checkOf(given, {
      ...{ part: 'summary', method: 'statistics.sample-summary', inputs },
      names: { mean_data: 'mean', sd_data: 'sd' },
    }),
    checkOf(given, {
      ...{ part: 'neighbours', method: 'statistics.lag-one-autocorrelation', inputs },
      names: { autocorrelation_ratio: 'autocorrelation_lag1' },
    }),
  ];
}

/** One-way analysis of variance. */
export function oneWayAnova(given) {
  const { groups, group_rules: rules } = given.inputs;
  return [
    checkOf(given, {
      method: 'statistics.one-way-anova',
      inputs: { groups: (groups ?? rules.map(byRule)).map((values_data) => ({ values_data })) },
      names: {
        ...{ betweenDf: 'df_between', withinDf: 'df_within', statistic_ratio: 'F', p_frac: 'p' },
        ...{ betweenSumOfSquares_data2: 'ss_between', withinSumOfSquares_data2: 'ss_within' },
        ...{ betweenMeanSquare_data2: 'ms_between', withinMeanSquare_data2: 'ms_within' },
        ...{ rSquared_ratio: 'r_squared', residualSd_data: 'residual_sd' },
      },
    }),
  ];
}

import { oneWayAnova, univariate } from '../nist-anova.mjs';

const given = (values) => Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));

/** The tolerance of the case under the keys of the method. */
function renamed({ fields, ...own } = {}, names) {
  if (!fields) return own;
  return {
    ...own,
    fields: Object.fromEntries(Object.entries(fields).map(([key, value]) => [names[key] ?? key, value])),
  };
}

const NAMES = {
  ...{ coefficients: 'estimate_data', parameters: 'estimate_data', standard_errors: 'standardError_data' },
  ...{ residual_ss: 'residualSumOfSquares_data2', residual_sd: 'residualSd_data', r_squared: 'rSquared_ratio' },
  df: 'degreesOfFreedom',
};

const common = ({ residual_ss, residual_sd, r_squared, df }) =>
  given({
    ...{ residualSumOfSquares_data2: residual_ss, residualSd_data: residual_sd },
    ...{ rSquared_ratio: r_squared, degreesOfFreedom: df },
  });

const estimates = (values, errors) =>
  values.map((estimate_data, k) => given({ estimate_data, standardError_data: errors?.[k] }));

function linear({ inputs, expected, tolerance }) {
  return [
    {
      method: 'statistics.linear-regression',
      inputs: {
        rows: inputs.X.map((terms_data) => ({ terms_data })),
        ...{ responses_data: inputs.y, hasConstant: inputs.intercept },
      },
      expected: { ...common(expected), terms: estimates(expected.coefficients, expected.standard_errors) },
      tolerance: renamed(tolerance, NAMES),
    },
  ];
}

/** From the second start of NIST, and from both, the best of which must be the same. */
function nonlinear({ inputs, expected, tolerance }) {
  const { model, start1, start2, x, y } = inputs;
  const check = (part, starts) => ({
    ...{ part, method: 'statistics.nonlinear-regression' },
    inputs: {
      formula: model.replace(/^\s*(y|log\[y\])\s*=/, '').replace(/\+\s*e\s*$/, ''),
      parameterNames: expected.parameters.map((_, k) => `b${k + 1}`),
      variables: variablesOf(x),
      ...{ responses_data: y, starts: starts.map((values_data) => ({ values_data })) },
    },
    expected: {
      ...{ isConverged: true, ...common(expected) },
      parameters: estimates(expected.parameters, expected.standard_errors),
    },
    tolerance: renamed(tolerance, NAMES),
  });
  return [check('second-start', [start2]), check('both-starts', [start1, start2])];
}

/** One variable x, or several by name or in the columns x1, x2. */
function variablesOf(x) {
  if (!Array.isArray(x)) return Object.entries(x).map(([name, values_data]) => ({ name, values_data }));
  if (!Array.isArray(x[0])) return [{ name: 'x', values_data: x }];
  return x[0].map((_, k) => ({ name: `x${k + 1}`, values_data: x.map((row) => row[k]) }));
}

const KINDS = {
  ...{ 'linear regression': linear, 'nonlinear regression': nonlinear },
  ...{ univariate, 'one-way anova': oneWayAnova },
};

/** NIST Statistical Reference Datasets, by kind. */
export function cases(given) {
  return KINDS[given.inputs.kind]?.(given) ?? [];
}

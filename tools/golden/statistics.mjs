import { scaled } from './units.mjs';

/**
 * Which methods compute a case of a statistics set: by the set's name a function from the case to a list of
 * `{ part?, method, inputs, expected, tolerance? }`, empty for a case that no method computes. A case that speaks of several methods
 * becomes several check cases, told apart by `part`. Sets without a line here are left out.
 */
export const SETS = new Map([
  ['udu_acceptance_value', acceptanceValue],
  ['udu_oc', dosageUnitsPass],
  ['uniformity_of_mass', uniformityOfMass],
]);

function acceptanceValue({ inputs, expected }) {
  if (inputs.method !== 'from statistics') return [];
  return [
    {
      method: 'statistics.acceptance-value',
      inputs: { mean_pct: inputs.mean, sd_pct: inputs.s, unitCount: inputs.n, target_pct: inputs.T },
      expected: { reference_pct: expected.M, acceptanceValue_pct: expected.AV },
    },
  ];
}

/** Both stages, and for each number of units the probability that its acceptance value stays within L1. */
function dosageUnitsPass({ inputs, expected, tolerance = {} }) {
  const { mean, sd, T, L1, L2, distribution } = inputs;
  if (L1 !== 15 || L2 !== 25 || distribution !== 'normal') return [];
  const lot = { mean_pct: mean, sd_pct: sd, target_pct: T };
  const { fields = {}, ...own } = tolerance;
  const within = (part, unitCount, name) => ({
    ...{ part, method: 'statistics.acceptance-value-within', inputs: { ...lot, unitCount, limit_pct: L1 } },
    ...{ expected: expected[name], tolerance: fields[name] ?? own },
  });
  return [
    within('10-units', 10, 'p_stage1_exact'),
    within('30-units', 30, 'p_av30_exact'),
    {
      ...{ part: 'both-stages', method: 'statistics.dosage-units-pass', inputs: lot },
      ...{ expected: expected.p_pass, tolerance: fields.p_pass ?? own },
    },
  ].filter((one) => one.expected !== undefined);
}

function uniformityOfMass({ inputs, expected }) {
  if (inputs.test !== 'EP 2.9.5 capsules') return [];
  const { mean_net, limit_pct, n_outside_single, n_outside_double, max_deviation_pct, passes } = expected;
  return [
    {
      method: 'statistics.uniformity-of-mass',
      inputs: { contents_mg: inputs.gross_mg.map((gross, i) => scaled(gross - inputs.shell_mg[i], 1)) },
      expected: {
        ...{ verdict: passes ? 'pass' : 'fail', mean_mg: mean_net, limit_pct, largestDeviation_pct: max_deviation_pct },
        ...{ beyondLimitCount: n_outside_single, beyondTwiceCount: n_outside_double },
      },
    },
  ];
}

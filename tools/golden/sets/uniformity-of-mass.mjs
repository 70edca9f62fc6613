import { scaled } from '../units.mjs';

export function cases({ inputs, expected }) {
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

import { scaled } from '../units.mjs';

const CONDUCT = { purpose: 'release' };
const DECISIONS = {
  'pass on gross weights': { verdict: 'pass', next: 'none', decidedBy: 'gross' },
  'pass on net contents': { verdict: 'pass', next: 'none', decidedBy: 'net' },
  'pass after 60': { verdict: 'pass', next: 'none', decidedBy: 'net-of-60' },
  'test 40 more': { verdict: 'cannot-tell', next: 'test-further-units', decidedBy: 'net' },
  fail: { verdict: 'fail', next: 'investigate' },
};

export function cases({ inputs, expected }) {
  if (inputs.test === 'EP 2.9.5 capsules') return [capsules(inputs, expected)];
  if (inputs.test === 'USP 2091 hard capsules') return [supplement(inputs, expected)];
  return [];
}

function capsules(inputs, { mean_net, limit_pct, n_outside_single, n_outside_double, max_deviation_pct, passes }) {
  return {
    method: 'statistics.uniformity-of-mass',
    inputs: {
      contents_mg: inputs.gross_mg.map((gross, i) => scaled(gross - inputs.shell_mg[i], 1)),
      ...{ ...CONDUCT, route: ['uniformity-of-mass'] },
    },
    expected: {
      ...{ verdict: passes ? 'pass' : 'fail', mean_mg: mean_net, limit_pct, largestDeviation_pct: max_deviation_pct },
      ...{ beyondLimitCount: n_outside_single, beyondTwiceCount: n_outside_double },
    },
  };
}

function supplement({ gross_mg, shell_mg, gross_mg_2, shell_mg_2 }, expected) {
  const named = {
    ...DECISIONS[expected.decision],
    ...{ meanGross_mg: expected.mean_gross, grossBeyond10Count: expected.n_gross_outside_10pct },
    ...{ meanNet20_mg: expected.mean_net_20, netBeyond10Of20Count: expected.n_over_10pct_20 },
    ...{ netBeyond25Of20Count: expected.n_over_25pct_20, meanNet60_mg: expected.mean_net_60 },
    ...{ netBeyond10Of60Count: expected.n_over_10pct_60, netBeyond25Of60Count: expected.n_over_25pct_60 },
  };
  return {
    method: 'statistics.supplement-mass',
    inputs: {
      ...{ gross_mg, ...(shell_mg && { shells_mg: shell_mg }) },
      ...(gross_mg_2 && { furtherGross_mg: gross_mg_2 }),
      ...(shell_mg_2 && { furtherShells_mg: shell_mg_2 }),
      ...{ ...CONDUCT, route: ['supplement-mass'] },
    },
    expected: Object.fromEntries(Object.entries(named).filter(([, value]) => value !== undefined)),
  };
}

/** Both stages, and for each number of units the probability that its acceptance value stays within L1. */
export function cases({ inputs, expected, tolerance = {} }) {
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

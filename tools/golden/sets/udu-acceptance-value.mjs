export function cases({ inputs, expected }) {
  if (inputs.method !== 'from statistics') return [];
  return [
    {
      method: 'statistics.acceptance-value',
      inputs: { mean_pct: inputs.mean, sd_pct: inputs.s, unitCount: inputs.n, target_pct: inputs.T },
      expected: { reference_pct: expected.M, acceptanceValue_pct: expected.AV },
    },
  ];
}

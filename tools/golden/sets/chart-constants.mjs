export function cases({ inputs, expected }) {
  const keyOf = (name) => (/^[A-Z]/.test(name) ? `factor${name}_ratio` : `${name}_ratio`);
  return [
    {
      method: 'statistics.chart-constants',
      inputs: { subgroupSize: inputs.n },
      expected: Object.fromEntries(Object.entries(expected).map(([name, value]) => [keyOf(name), value])),
    },
  ];
}

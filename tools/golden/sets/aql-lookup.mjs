export function cases({ inputs, expected, tolerance = {} }) {
  const { lot, level, aql, inspection } = inputs;
  const { code_letter, plan_letter, n, ac, re, inspect_all } = expected;
  const counts = { sampleSize: n, acceptanceNumber: ac, rejectionNumber: re };
  const fields = Object.fromEntries(Object.keys(counts).map((key) => [key, { abs: 0 }]));
  return [
    {
      ...{ method: 'statistics.attribute-plan', inputs: { lotSize: lot, level, aql, inspection } },
      expected: { codeLetter: code_letter, planLetter: plan_letter, ...counts, inspectAll: inspect_all },
      tolerance: { ...tolerance, fields },
    },
  ];
}

import { renamedFields } from '../renamed-fields.mjs';

const keyOf = (name) => (/^[A-Z]/.test(name) ? `factor${name}_ratio` : `${name}_ratio`);

export function cases({ inputs, expected, tolerance }) {
  const names = Object.keys(expected);
  return [
    {
      method: 'statistics.chart-constants',
      inputs: { subgroupSize: inputs.n },
      expected: Object.fromEntries(names.map((name) => [keyOf(name), expected[name]])),
      tolerance: renamedFields(tolerance, Object.fromEntries(names.map((name) => [name, keyOf(name)]))),
    },
  ];
}

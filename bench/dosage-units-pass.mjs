import { measured } from './child.mjs';
import { elsewhere, ratios, requireAgreement } from './elsewhere.mjs';
import { linesInC } from './in-c.mjs';

/** Mean and standard deviation, % of the claim, of the nine batches of the baseline task `t1det`. */
export const BATCHES = [
  [100, 6],
  [96, 5.5],
  [100, 7.5],
  [92, 4],
  [97, 6.5],
  [104, 5],
  [90, 3],
  [100, 5],
  [100, 4],
];

/** The settings of `t1det`: k 2.4 and 2.0, node density 1.8, 12 inner nodes; its error is below 1e-6. */
const C_VALUES = `
#include <stdio.h>
#include "kernels.c"
int main(void) {
  static const double batches[][2] = {${BATCHES.map((batch) => `{${batch}}`)}};
  for (int i = 0; i < ${BATCHES.length}; i++)
    printf("%.12f\\n", k_udu(batches[i][0], batches[i][1], 2.4, 2.0, 1.8, 12));
}
`;
/** The error allowed to one probability. */
const AGREEMENT = 1e-6;

/** Exact probability to pass the uniformity of dosage units: first call, warm mean per call, and a surface of 101 x 60. */
export function round() {
  const there = elsewhere('t1det');
  const found = measured(new URL('./measured/dosage-units-pass.mjs', import.meta.url));
  const { first, warm, surface, probabilities } = found;
  const expected = probabilities.reduce((sum, probability) => sum + probability, 0);
  requireAgreement('dosage-units-pass', { there, expected, within: BATCHES.length * AGREEMENT });
  if (there.C !== undefined) requireSameInC(probabilities);
  const aim = { kind: 'cpu', limit: 50, ambitious: 20 };
  return [
    { figure: 'first call', unit: 'ms', ...first },
    {
      ...{ figure: 'warm, mean of nine batches', unit: 'us', ...warm, aim },
      ...ratios(warm.cpu_ms * BATCHES.length, there),
    },
    // Ambitious: 80 ms on two cores.
    { figure: 'surface of 101 x 60', unit: 'ms', ...surface, aim: { kind: 'cpu', ambitious: 160 } },
  ];
}

function requireSameInC(probabilities) {
  linesInC('values', C_VALUES).forEach((line, i) => {
    const there = { C: { value: Number(line) } };
    requireAgreement(`batch ${BATCHES[i]}`, { there, expected: probabilities[i], within: AGREEMENT });
  });
}

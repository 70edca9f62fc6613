import { baseline, baselineLines, whyNoBaseline } from './baseline.mjs';
import { measured } from './child.mjs';

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
const AGREEMENT = 1e-6;

/** Exact probability to pass the uniformity of dosage units: first call, and warm mean per call against C. */
export function round() {
  const inC = whyNoBaseline() === undefined ? baseline('t1det').cpu_ms / BATCHES.length : undefined;
  const { first, warm, probabilities } = measured(new URL('./measured/dosage-units-pass.mjs', import.meta.url));
  if (inC !== undefined) requireAgreement(probabilities);
  return [
    { figure: 'first call', unit: 'ms', ...first },
    {
      ...{ figure: 'warm, mean of nine batches', unit: 'us', ...warm, aim: { kind: 'cpu', limit: 50, ambitious: 20 } },
      ...(inC === undefined ? {} : { ratio: warm.cpu_ms / inC }),
    },
  ];
}

function requireAgreement(probabilities) {
  baselineLines('values', C_VALUES).forEach((line, i) => {
    const difference = Math.abs(probabilities[i] - Number(line));
    if (!(difference <= AGREEMENT))
      throw new Error(`batch ${BATCHES[i]}: ${probabilities[i]} here, ${line} in C, more than ${AGREEMENT} apart`);
  });
}

import type { NumberReference } from '../number-reference.ts';
import type { ChosenEquation } from './chosen-equation.ts';

/**
 * The spread between capsules, every cause written out.
 *
 * @param reference - with the causes
 * @param outputs - the spread
 * @returns the equation with its values
 */
export function spreadEquation(
  { inputs }: NumberReference,
  outputs: Readonly<Record<string, unknown>>,
): ChosenEquation {
  const causes = inputs['causes_pct'] as readonly number[];
  return {
    latex: `u = \\sqrt{${causes.map((_, i) => `u_{${i + 1}}^2`).join('+')}}`,
    values: {
      u: Number(outputs['unit_pct']),
      ...Object.fromEntries(causes.map((cause, i) => [`u_${i + 1}`, cause])),
    },
    inDrawing: [],
  };
}

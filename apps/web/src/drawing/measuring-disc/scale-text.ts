import { fixed } from '../figures.ts';

const MOST_DECIMALS = 3;

/** Decimals that a step of the scale needs: 0.1 needs one, 0.25 two. */
function decimalsOf(step: number): number {
  const exact = [0, 1, 2, MOST_DECIMALS].find((n) => Math.abs(Number(step.toFixed(n)) - step) < 1e-9);
  return exact ?? MOST_DECIMALS;
}

/**
 * A reading as a person finds it on the scale: as many decimals as the step has, and one more where it stands between
 * two marks.
 *
 * @param reading_division - on the machine's own scale
 * @param step_division - of that scale
 * @returns for example `21.5`
 */
export function scaleText(reading_division: number, step_division: number): string {
  const decimals = decimalsOf(step_division);
  const isOnMark = Math.abs(Number(reading_division.toFixed(decimals)) - reading_division) < step_division / 20;
  return fixed(reading_division, isOnMark ? decimals : decimals + 1);
}

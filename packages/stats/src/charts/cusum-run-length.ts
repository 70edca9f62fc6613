import { requireWithin } from '#elementary';
import { cusumMeanRunLength } from './cusum-mean-run-length.kernel.ts';

export interface CusumRunLengthInput {
  /** Reference value k, in standard deviations of the plotted value. */
  readonly reference: number;
  /** Decision interval h, in standard deviations. */
  readonly decisionInterval: number;
  /** Shift of the mean in standard deviations of the plotted value. */
  readonly shift: number;
  /** Both sums start at this share of the decision interval; left out: 0. */
  readonly headStart_frac?: number;
}

export interface CusumRunLengths {
  readonly twoSided: number;
  /** Of each sum alone, from the head start. */
  readonly upper: number;
  readonly lower: number;
}

/** A run length above this is as good as endless; the equations could not tell it apart. */
const ENDLESS = 1e11;

/**
 * Mean run length of a CUSUM chart with two sums.
 *
 * From 0: 1/ARL = 1/U + 1/D. With a head start, U' and D' being those of the sums alone from it:
 * ARL = (U' D + U D' - U D) / (U + D).
 *
 * @param input - reference 0 to 5; decisionInterval 0.1 to 24; shift -10 to 10; headStart_frac 0 to below 1
 * @returns mean number of points up to the signal for both sums and each alone; at most 1e11
 * @throws StatsError "not-finite", "out-of-range"
 * @source K. W. Kemp, Appl. Statist. 10 (1961) for the two sums; J. M. Lucas, R. B. Crosier, Technometrics 24 (1982) 199-205
 *   for the head start (both from memory)
 * @validity normal independent values, target and sigma known; the rule for two sums is exact while one of them is 0 whenever the
 *   other signals: both head starts together at most h + 2k; relative error below 1e-7
 */
export function cusumRunLength(input: CusumRunLengthInput): CusumRunLengths {
  const { reference, decisionInterval, shift, headStart_frac = 0 } = input;
  requireWithin({ reference }, { min: 0, max: 5 });
  requireWithin({ decisionInterval }, { min: 0.1, max: 24 });
  requireWithin({ shift }, { min: -10, max: 10 });
  requireWithin({ headStart_frac }, { min: 0, below: 1 });
  const start = headStart_frac * decisionInterval;
  const side = (moved: number): { fromZero: number; fromStart: number } => {
    const found = cusumMeanRunLength({ drift: reference - moved, decisionInterval, start });
    return found.fromZero > 0 && found.fromZero < ENDLESS ? found : { fromZero: ENDLESS, fromStart: ENDLESS };
  };
  const up = side(shift);
  const down = shift === 0 ? up : side(-shift);
  const both = up.fromStart * down.fromZero + up.fromZero * down.fromStart - up.fromZero * down.fromZero;
  const twoSided = both / (up.fromZero + down.fromZero);
  return { twoSided, upper: up.fromStart, lower: down.fromStart };
}

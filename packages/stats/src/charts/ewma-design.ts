import { exp, log, requireWithin } from '#elementary';
import { ewmaLimitFactor } from './ewma-limit-factor.ts';
import { ewmaMeanRunLength } from './ewma-mean-run-length.kernel.ts';
import { leastPoint } from './least-point.ts';

export interface DesignWish {
  /** Shift to be found soon, in standard deviations of the plotted value. */
  readonly shift: number;
  /** Mean number of points up to a false alarm. */
  readonly inControlRunLength: number;
}

export interface EwmaDesign {
  readonly lambda: number;
  readonly limitFactor: number;
  /** Mean run length at the shift, a fresh chart. */
  readonly runLength: number;
}

/**
 * The two-sided EWMA chart that finds a given shift soonest on average for a given mean run length in control.
 *
 * @param input - shift 0.1 to 5; inControlRunLength 10 to 1e6
 * @returns lambda (to 0.1 %), width of the limits, mean run length at the shift
 * @throws StatsError "not-finite", "out-of-range"
 * @source S. V. Crowder, J. Qual. Technol. 21 (1989) 155-162 for the aim (from memory); golden section over log lambda, 0.01 to 1
 * @validity normal independent values, target and sigma known, constant limits, shift present from the start; the valley is flat
 */
export function ewmaDesign({ shift, inControlRunLength }: DesignWish): EwmaDesign {
  requireWithin({ shift }, { min: 0.1, max: 5 });
  requireWithin({ inControlRunLength }, { min: 10, max: 1e6 });
  let guess: { guess?: number } = {};
  const designed = (logLambda: number): EwmaDesign => {
    const lambda = Math.min(1, Math.max(0.01, exp(logLambda)));
    const limitFactor = ewmaLimitFactor({ lambda, inControlRunLength, ...guess });
    guess = { guess: limitFactor };
    return { lambda, limitFactor, runLength: ewmaMeanRunLength({ lambda, limitFactor, shift }) };
  };
  const best = leastPoint((at) => designed(at).runLength, { from: log(0.01), to: 0, tolerance: 1e-3 });
  return designed(best);
}

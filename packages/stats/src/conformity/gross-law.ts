import { requireWithin } from '#elementary';

/** Net, shell and weighing, in one unit. */
export interface NetAndShell {
  readonly meanNet: number;
  /** Above 0. */
  readonly sdNet: number;
  readonly meanShell: number;
  /** From 0. */
  readonly sdShell: number;
  /** Standard deviation of one weighing, 0 unless given. */
  readonly sdWeighing?: number;
  /** Correlation of net and shell, -1 to 1; 0 unless given. */
  readonly correlation?: number;
}

/** How the gross follows the net. */
export interface GrossLaw {
  readonly meanGross: number;
  readonly sdGross: number;
  readonly correlationNetGross: number;
  /** Rise of the gross with the net; 1 for independent shells. */
  readonly slope: number;
  /** Standard deviation of the gross around its line at a given net. */
  readonly scatter: number;
}

/**
 * Law of the gross G = N + S + e.
 *
 * @param input - net, shell and weighing
 * @returns mean, sd, correlation with the net, line on the net and scatter around it
 * @throws StatsError "not-finite", "out-of-range"
 * @source sum of normal values; design reference "Gross-weight control"
 * @validity net and shell bivariate normal, the weighing independent of both
 */
export function grossLaw(input: NetAndShell): GrossLaw {
  const { meanNet, sdNet, meanShell, sdShell, sdWeighing = 0, correlation = 0 } = input;
  requireWithin({ meanNet, meanShell });
  requireWithin({ sdNet }, { above: 0 });
  requireWithin({ sdShell, sdWeighing }, { min: 0 });
  requireWithin({ correlation }, { min: -1, max: 1 });
  const slope = 1 + (correlation * sdShell) / sdNet;
  const own = sdShell * sdShell * (1 - correlation * correlation) + sdWeighing * sdWeighing;
  const sdGross = Math.sqrt(slope * slope * sdNet * sdNet + own);
  requireWithin({ sdGross }, { above: 0 });
  return {
    ...{ meanGross: meanNet + meanShell, sdGross, slope, scatter: Math.sqrt(own) },
    correlationNetGross: (slope * sdNet) / sdGross,
  };
}

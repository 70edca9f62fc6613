import type { MeanInterval } from '@fillwright/engine/dosing';

/** How sure a number of the prediction is, in its own unit. */
export interface NumberInterval {
  readonly low90: number;
  readonly high90: number;
  readonly sd: number;
  readonly shares: MeanInterval['shares'];
}

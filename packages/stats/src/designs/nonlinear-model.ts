import type { Matrix } from '#numerics';

/** What a model predicts at all runs for given parameters; values that are not finite mark parameters as impossible. */
export type NonlinearModel = (parameters: readonly number[]) => {
  /** One per run. */
  readonly predicted: readonly number[];
  /** One row per run: derivatives by the parameters. */
  readonly jacobian: Matrix;
};

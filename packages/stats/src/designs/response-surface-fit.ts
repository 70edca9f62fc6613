import type { Matrix } from '#numerics';
import { type CanonicalAnalysis, canonicalAnalysis } from './canonical-analysis.ts';
import { type LinearFit, linearFit } from './linear-fit.ts';
import { modelMatrix } from './model-matrix.ts';
import { type DesignModel, modelTerms } from './model-terms.ts';

export interface ResponseSurfaceTask {
  /** Coded levels. */
  readonly rows: Matrix;
  readonly values: readonly number[];
  readonly model: DesignModel;
}

export interface ResponseSurfaceFit extends LinearFit {
  /** Names of the terms in the order of `terms`. */
  readonly names: readonly string[];
  /** Of a quadratic model all of whose terms could be estimated. */
  readonly canonical?: CanonicalAnalysis;
}

/**
 * Fit of a polynomial model to the runs of a design.
 *
 * @param task - rows: n x k coded levels; values: n; model
 * @returns the fit, names of its terms, canonical analysis of a full quadratic
 * @throws StatsError "sample-size", "wrong-length", "not-finite", "out-of-range"
 * @source see `linearFit`, `canonicalAnalysis`
 * @validity levels coded before squaring; hard-to-change factors (split plots) make the ordinary error term wrong;
 *   components that add up to 100 % need a mixture model
 */
export function responseSurfaceFit({ rows, values, model }: ResponseSurfaceTask): ResponseSurfaceFit {
  const factorCount = rows[0]?.length ?? 0;
  const terms = modelTerms({ factorCount, model });
  const fit = linearFit({ rows: modelMatrix({ rows, terms }), values, hasConstant: true });
  const names = terms.map(({ name }) => name);
  if (model !== 'quadratic' || fit.leftOut.length > 0) return { ...fit, names };
  const estimates = fit.terms.map(({ estimate }) => estimate!);
  const canonical = canonicalAnalysis({
    constant: estimates[0]!,
    linear: estimates.slice(1, factorCount + 1),
    squares: estimates.slice(factorCount + 1, 2 * factorCount + 1),
    products: estimates.slice(2 * factorCount + 1),
  });
  return { ...fit, names, canonical };
}

import { exp, log } from '#elementary';
import { type Matrix, pivotedQr } from '#numerics';
import { type DesignModel, modelTerms } from './model-terms.ts';
import { modelMatrix } from './model-matrix.ts';

export interface DesignEfficiency {
  readonly termCount: number;
  /** Whether every term can be estimated. */
  readonly isEstimable: boolean;
  /** Terms that cannot be told from those before them. */
  readonly dependentTerms: readonly string[];
  /** Natural logarithm of det(X'X); absent when a term cannot be estimated. */
  readonly logDeterminant?: number;
  /** det(X'X)^(1/p) / n; 0 when a term cannot be estimated. */
  readonly dEfficiency: number;
}

/**
 * D-efficiency of a design for a polynomial model, per run and in coded levels.
 *
 * @param design - rows: n x k coded levels; model
 * @returns log determinant and efficiency; terms that the design cannot tell apart by name
 * @throws StatsError "sample-size", "wrong-length", "not-finite", "out-of-range"
 * @source definition: det(X'X)^(1/p) / n
 * @validity efficiencies compare only designs over the same coded region
 */
export function designEfficiency(design: { readonly rows: Matrix; readonly model: DesignModel }): DesignEfficiency {
  const { rows, model } = design;
  const terms = modelTerms({ factorCount: rows[0]?.length ?? 0, model });
  const qr = pivotedQr({ rows: modelMatrix({ rows, terms }), pivoting: 'first' });
  const termCount = terms.length;
  const dependentTerms = qr.order
    .slice(qr.rank)
    .toSorted((a, b) => a - b)
    .map((j) => terms[j]!.name);
  if (qr.rank < termCount) return { termCount, isEstimable: false, dependentTerms, dEfficiency: 0 };
  const logDeterminant = qr.diagonal.reduce(
    (sum, entry, k) => sum + 2 * log(Math.abs(entry) * qr.scales[qr.order[k]!]!),
    0,
  );
  const dEfficiency = exp(logDeterminant / termCount) / rows.length;
  return { termCount, isEstimable: true, dependentTerms, logDeterminant, dEfficiency };
}

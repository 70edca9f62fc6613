import { StatsError } from '#elementary';
import type { Matrix } from '#numerics';
import { expressionGradient } from './expression-gradient.ts';
import type { NonlinearModel } from './nonlinear-model.ts';
import { readExpression } from './read-expression.ts';

export interface ExpressionModelTask {
  /** Formula of the response, as for `readExpression`. */
  readonly formula: string;
  /** Names of the parameters, in the order of their values. */
  readonly parameters: readonly string[];
  /** Names of the variables, in the order of the columns of `rows`. */
  readonly variables: readonly string[];
  /** One row per run: values of the variables. */
  readonly rows: Matrix;
}

/**
 * Model for `nonlinearFit` from a formula, with exact derivatives.
 *
 * @param task - formula, names, values of the variables
 * @returns the model
 * @throws StatsError "not-readable", "wrong-length" (a row that has not one value per variable), "not-finite"
 * @source see `readExpression`, `expressionGradient`
 */
export function expressionModel({ formula, parameters, variables, rows }: ExpressionModelTask): NonlinearModel {
  const gradientAt = expressionGradient({ expression: readExpression(formula), parameters, variables });
  for (const [run, row] of rows.entries()) {
    if (row.length !== variables.length)
      throw new StatsError('wrong-length', { run, given: row.length, variableCount: variables.length });
    if (!row.every(Number.isFinite)) throw new StatsError('not-finite', { run });
  }
  return (values) => {
    const gradients = rows.map((row) => gradientAt({ parameters: values, variables: row }));
    return { predicted: gradients.map(({ value }) => value), jacobian: gradients.map(({ slopes }) => slopes) };
  };
}

import { requireWhole } from '#elementary';

/** `interactions`: main effects and products of two; `quadratic`: these and the squares. All with a constant. */
export type DesignModel = 'main-effects' | 'interactions' | 'quadratic';

/** One term of a polynomial: the factors multiplied, counted from 0; none: the constant. */
export interface Term {
  /** `1`, `x2`, `x2^2`, `x1:x2`. */
  readonly name: string;
  readonly factors: readonly number[];
}

/**
 * Terms of a polynomial model: constant, main effects, squares, products of two.
 *
 * @param choice - factorCount: 1 to 30; model
 * @returns terms in that order
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source definition
 */
export function modelTerms(choice: { readonly factorCount: number; readonly model: DesignModel }): Term[] {
  const { factorCount, model } = choice;
  requireWhole({ factorCount }, { min: 1, max: 30 });
  const factors = Array.from({ length: factorCount }, (_, k) => k);
  const term = (name: string, ...parts: number[]): Term => ({ name, factors: parts });
  const main = factors.map((k) => term(`x${k + 1}`, k));
  const squares = model === 'quadratic' ? factors.map((k) => term(`x${k + 1}^2`, k, k)) : [];
  const products =
    model === 'main-effects'
      ? []
      : factors.flatMap((k) => factors.slice(k + 1).map((l) => term(`x${k + 1}:x${l + 1}`, k, l)));
  return [term('1'), ...main, ...squares, ...products];
}

import type { FactorColumns } from './factor-columns.ts';

/** A factor that cannot be told from another one on this sample. */
export interface AliasedFactor {
  readonly name: string;
  /** The factor that settles its level, or "all values" where it has only one. */
  readonly by: string;
  /** same: each settles the other; contained: the other settles this one, not the other way round. */
  readonly kind: 'same' | 'contained' | 'one-level';
}

/**
 * Which factors a sample cannot tell apart: two whose levels always come together, and one whose level follows from another's
 * (six groups on twelve carriers: the carrier says the group).
 *
 * @param factors - by level, of the same values
 * @returns the aliased ones in the order given; of two that are the same the later one
 * @throws nothing
 * @source aliasing of factors, textbook; common practice, no source
 */
export function aliasedFactors(factors: readonly FactorColumns[]): readonly AliasedFactor[] {
  return factors.flatMap((factor, i): AliasedFactor[] => {
    const { name } = factor;
    if (factor.levels.length < 2) return [{ name, by: 'all values', kind: 'one-level' }];
    for (const [j, other] of factors.entries()) {
      if (i === j || !settles(other, factor)) continue;
      if (!settles(factor, other)) return [{ name, by: other.name, kind: 'contained' }];
      if (j < i) return [{ name, by: other.name, kind: 'same' }];
    }
    return [];
  });
}

/** Every level of the one comes with a single level of the other. */
function settles(one: FactorColumns, other: FactorColumns): boolean {
  const seen = new Map<number, number>();
  for (const [i, level] of one.at.entries()) {
    const found = other.at[i]!;
    if ((seen.get(level) ?? found) !== found) return false;
    seen.set(level, found);
  }
  return true;
}

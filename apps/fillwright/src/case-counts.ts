import type { CaseResult } from '@fillwright/engine/catalogue';

/** How many cases came out how. */
export interface Counts {
  readonly total: number;
  readonly pass: number;
  readonly fail: number;
  readonly cannotTell: number;
  readonly disputed: number;
}

/**
 * Counts verdicts, over all cases and by group in the order in which the groups appear.
 *
 * @param results - judged cases
 * @returns the counts
 */
export function countsOf(results: readonly CaseResult[]): {
  readonly summary: Counts;
  readonly groups: Readonly<Record<string, Counts>>;
} {
  const names = [...new Set(results.map(({ group }) => group))];
  const groups = names.map((name) => [name, count(results.filter(({ group }) => group === name))] as const);
  return { summary: count(results), groups: Object.fromEntries(groups) };
}

function count(results: readonly CaseResult[]): Counts {
  const of = (verdict: CaseResult['verdict']): number => results.filter((result) => result.verdict === verdict).length;
  return {
    total: results.length,
    pass: of('pass'),
    fail: of('fail'),
    cannotTell: of('cannot-tell'),
    disputed: of('disputed'),
  };
}

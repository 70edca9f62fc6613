import { binomialCdf } from '#distributions';
import { requireWhole } from '#elementary';

/** Rows of the printed table that were seen; nothing is known of the rows between and beyond. */
const ROWS = [
  { from: 490, k: 2.24 },
  { from: 407, k: 2.24 },
  { from: 385, k: 2.23 },
];
/** The next change of c2 by the rule: here at the latest another row begins. */
const ROWS_END = 594;

/** 1 - 0.75^(1/30): share of units outside such that 30 units show none with probability 0.75. */
const SHARE_OUTSIDE = 0.00954357071226286;

/** What is known of the large-sample test at n units; without a verdict, since most of its table was not seen. */
export interface LargeSampleCounts {
  /** Greatest number of units outside (1 +- 0.01 L2) M. */
  readonly greatestOutsideCount: number;
  /** Factor k and the row it stands in, where that row was seen. */
  readonly printed?: { readonly k: number; readonly row: number };
}

/**
 * What is known of the demonstration of uniformity with large samples.
 *
 * c2 is the largest c with P(Y <= c) <= 0.5 for a binomial Y of n units and a share 1 - 0.75^(1/30) outside: it gives both
 * printed thresholds. k and c1 follow from no known rule.
 *
 * @param sample - n: whole, 100 to 1e6
 * @returns c2, and k where its row was seen
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source Ph. Eur. 2.9.47 (04/2013:20947): rows 385, 407 and 490 (secondary); c2 derived, not printed
 * @validity not a test: buy the text; between 490 and 593 the row may already be another one
 */
export function largeSampleCounts(sample: { readonly n: number }): LargeSampleCounts {
  const { n } = sample;
  requireWhole({ n }, { min: 100, max: 1e6 });
  let count = Math.max(0, Math.floor(n * SHARE_OUTSIDE) - 2);
  while (binomialCdf({ k: count + 1, n, p: SHARE_OUTSIDE }) <= 0.5) count += 1;
  const row = n < ROWS_END ? ROWS.find(({ from }) => n >= from) : undefined;
  return { greatestOutsideCount: count, ...(row ? { printed: { k: row.k, row: row.from } } : {}) };
}

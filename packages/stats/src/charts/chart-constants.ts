import { gaussLegendre } from '#distributions';
import { requireWhole } from '#elementary';
import { rangeSurvival } from './range-survival.ts';

/** Factors of control charts for subgroups of one size, under the names of the trade. */
export interface ChartConstants {
  readonly d2: number;
  readonly d3: number;
  readonly c4: number;
  readonly A: number;
  readonly A2: number;
  readonly A3: number;
  readonly B3: number;
  readonly B4: number;
  readonly B5: number;
  readonly B6: number;
  readonly D1: number;
  readonly D2: number;
  readonly D3: number;
  readonly D4: number;
  readonly E2: number;
}

const RULE = gaussLegendre(40);
const WIDEST_RANGE = 14;
const PANELS = 2;
/** By size: the integration takes milliseconds, charts ask for the same few sizes. */
const made = new Map<number, ChartConstants>();

/**
 * Factors of control charts for any subgroup size, by integration of the law of the range.
 *
 * d2 and d3 are mean and standard deviation of the range, c4 the mean of the standard deviation (n - 1 form), all of n normal
 * values with standard deviation 1. Limits lie three standard deviations out; a lower factor below 0 is 0.
 *
 * @param input - n: size of the subgroups, 2 to 1000; for the moving range of two neighbours n = 2
 * @returns A, B5, B6, D1, D2 for a known standard deviation; A2, D3, D4, E2 for the mean range; A3, B3, B4 for the mean sd
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source ISO 7870-2 (definitions of the factors; secondary); E R = int P(R > r) dr, E R^2 = 2 int r P(R > r) dr
 * @validity absolute error below 1e-10 for n up to 100
 */
export function chartConstants({ n }: { readonly n: number }): ChartConstants {
  requireWhole({ n }, { min: 2, max: 1000 });
  const known = made.get(n) ?? Object.freeze(integrated(n));
  made.set(n, known);
  return known;
}

function integrated(n: number): ChartConstants {
  const { d2, d3 } = rangeMoments(n);
  const c4 = meanOfSd(n);
  const root = Math.sqrt(n);
  const sdOfSd = Math.sqrt(1 - c4 * c4);
  const below = (centre: number, spread: number): number => Math.max(0, centre - 3 * spread);
  return {
    ...{ d2, d3, c4 },
    ...{ A: 3 / root, A2: 3 / (d2 * root), A3: 3 / (c4 * root) },
    ...{ B3: below(1, sdOfSd / c4), B4: 1 + (3 * sdOfSd) / c4, B5: below(c4, sdOfSd), B6: c4 + 3 * sdOfSd },
    ...{ D1: below(d2, d3), D2: d2 + 3 * d3, D3: below(1, d3 / d2), D4: 1 + (3 * d3) / d2 },
    E2: 3 / d2,
  };
}

function rangeMoments(count: number): { d2: number; d3: number } {
  const half = (0.5 * WIDEST_RANGE) / PANELS;
  let [mean, square] = [0, 0];
  for (let panel = 0; panel < PANELS; panel++) {
    for (let i = 0; i < RULE.nodes.length; i++) {
      const range = half * (2 * panel + 1 + RULE.nodes[i]!);
      const share = half * RULE.weights[i]! * rangeSurvival({ range, count });
      mean += share;
      square += 2 * range * share;
    }
  }
  return { d2: mean, d3: Math.sqrt(square - mean * mean) };
}

/** sqrt(2/(n-1)) g(n), g(n) = Gamma(n/2) / Gamma((n-1)/2): g(2) = 1/sqrt(pi), g(n+1) g(n) = (n-1)/2. */
function meanOfSd(n: number): number {
  let ratio = 1 / Math.sqrt(Math.PI);
  for (let size = 2; size < n; size++) ratio = (0.5 * (size - 1)) / ratio;
  return ratio * Math.sqrt(2 / (n - 1));
}

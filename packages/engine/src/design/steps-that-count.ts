/** Differences smaller than this do not count: 0.1 percentage points of a share, 0.05 % of spread, 1 % of a margin. */
export const STEP = { share: 0.001, spread_pct: 0.05, margin: 0.01 } as const;

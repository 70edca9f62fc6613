/**
 * Rules for patterns on a chart, named by what they test. `run`: points in a row; `window`: so many of the last so many
 * beyond a distance on one side.
 */
export const CHART_RULES = {
  'one-beyond-3-sigma': { kind: 'window', needed: 1, of: 1, distance: 3 },
  'two-of-three-beyond-2-sigma': { kind: 'window', needed: 2, of: 3, distance: 2 },
  'four-of-five-beyond-1-sigma': { kind: 'window', needed: 4, of: 5, distance: 1 },
  'seven-on-one-side': { kind: 'window', needed: 7, of: 7, distance: 0 },
  'eight-on-one-side': { kind: 'window', needed: 8, of: 8, distance: 0 },
  'nine-on-one-side': { kind: 'window', needed: 9, of: 9, distance: 0 },
  'six-rising-or-falling': { kind: 'trend', needed: 6 },
  'fourteen-alternating': { kind: 'alternation', needed: 14 },
  'fifteen-within-1-sigma': { kind: 'within', needed: 15 },
  'eight-beyond-1-sigma-on-either-side': { kind: 'beyond', needed: 8 },
} as const;

export type ChartRule = keyof typeof CHART_RULES;

/** Rules that were published together. */
export const RULE_SETS = {
  /** Western Electric, Statistical Quality Control Handbook (1956), zone tests (from memory). */
  'western-electric-1956': [
    'one-beyond-3-sigma',
    'two-of-three-beyond-2-sigma',
    'four-of-five-beyond-1-sigma',
    'eight-on-one-side',
  ],
  /** L. S. Nelson, J. Qual. Technol. 16 (1984) 237-239, tests 1 to 8 (from memory). */
  'nelson-1984': [
    'one-beyond-3-sigma',
    'nine-on-one-side',
    'six-rising-or-falling',
    'fourteen-alternating',
    'two-of-three-beyond-2-sigma',
    'four-of-five-beyond-1-sigma',
    'fifteen-within-1-sigma',
    'eight-beyond-1-sigma-on-either-side',
  ],
} as const satisfies Record<string, readonly ChartRule[]>;

export type RuleSet = keyof typeof RULE_SETS;

/** Filler of a blend with a published least ejection force. */
export const LUBRICATED_FILLERS = ['anhydrous lactose', 'MCC', 'pregelatinised starch'] as const;

/**
 * Share of magnesium stearate at which a slug needs the least force to be ejected, % of the blend by mass; in the order
 * of LUBRICATED_FILLERS.
 *
 * @source Ridgway Watt & Armstrong (eds), Tablet and Capsule Machine Instrumentation (2008), ch. 10, p. 233 (seen)
 */
export const LUBRICANT_LEVELS: readonly {
  readonly filler: (typeof LUBRICATED_FILLERS)[number];
  readonly level_pct: number;
}[] = [
  { filler: 'anhydrous lactose', level_pct: 1 },
  { filler: 'MCC', level_pct: 0.5 },
  { filler: 'pregelatinised starch', level_pct: 0.1 },
];

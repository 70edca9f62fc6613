/** Materials that shells are made of. */
export const SHELL_MATERIALS = ['gelatin', 'HPMC', 'pullulan'] as const;

export type ShellMaterial = (typeof SHELL_MATERIALS)[number];

/**
 * Water of an empty shell as specified, loss on drying, % of the wet mass.
 *
 * @source gelatin: Japanese Pharmacopoeia, Capsules, draft revision text of December 2013, 1 g, 105 degC, 2 h (seen);
 *   HPMC: "IP/USP" on a trade page (secondary); pullulan: draft standard of unclear status (secondary)
 */
export const WATER_LIMITS: readonly {
  readonly material: ShellMaterial;
  readonly lower_pct: number;
  readonly upper_pct: number;
}[] = [
  { material: 'gelatin', lower_pct: 13, upper_pct: 16 },
  { material: 'HPMC', lower_pct: 3, upper_pct: 8 },
  { material: 'pullulan', lower_pct: 9, upper_pct: 14 },
];

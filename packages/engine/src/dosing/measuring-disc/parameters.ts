import type { DosingContext, Parameter, Settings } from '../dosing.ts';
import { offsetKey } from './keys.ts';
import { lawParameters } from './law-of-values.ts';
import { setUpOf, springOf } from './set-up.ts';

/**
 * What is uncertain about a dose from the measuring disc, with what is known of it now.
 *
 * @param context - material, filler and shell
 * @param settings - disc, springs and depths
 * @returns feed density, refill, compression law, spring, capture (only when switched on) and the setting of each pin
 *   that is not flush (half the backlash)
 * @throws DomainError "invalid-input" (a part that is not in stock, a missing depth), "out-of-range" (a depth)
 * @source see rooms `materials` and `fillers` for each prior
 */
export function parameters(context: DosingContext, settings: Settings): readonly Parameter[] {
  const { material, filler } = context;
  const { springs, depths_mm } = setUpOf(context, settings);
  const { preload_N, rate_N_per_mm } = springOf(springs);
  const offsets = filler.pins.scales
    .filter((_, i) => (depths_mm[i] ?? 0) > 0)
    .map(({ station, backlash_division, pitch_mm_per_division }): Parameter => {
      const sd = (backlash_division * pitch_mm_per_division) / 2;
      const prior = { basis: 'guess', mean: 0, sd, halvedBy: 'scale-check' } as const;
      return { key: offsetKey(station), prior, shape: 'normal' };
    });
  return [
    { key: 'feedDensity_g_per_mL', prior: material.feedDensity_g_per_mL, shape: 'normal', lowest: 0.01 },
    { key: 'refill_ratio', prior: material.refill_ratio, shape: 'normal', lowest: 0 },
    ...lawParameters(material.compression),
    { key: 'springPreload_N', prior: preload_N, shape: 'normal', lowest: 0 },
    { key: 'springRate_N_per_mm', prior: rate_N_per_mm, shape: 'normal', lowest: 0 },
    ...(material.captured_ratio
      ? [{ key: 'captured_ratio', prior: material.captured_ratio, shape: 'half-normal', lowest: 0 } as const]
      : []),
    ...offsets,
  ];
}

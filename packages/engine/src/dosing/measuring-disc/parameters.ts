import type { DosingContext, Parameter, Settings } from '../dosing.ts';
import { discParameters } from './disc-parameters.ts';
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
  const offsets = filler.pins.scales
    .filter((_, i) => (depths_mm[i] ?? 0) > 0)
    .map(({ station, backlash_division, pitch_mm_per_division }) => {
      const sd = (backlash_division * pitch_mm_per_division) / 2;
      return { station, off_mm: { basis: 'guess', mean: 0, sd, halvedBy: 'scale-check' } as const };
    });
  const { feedDensity_g_per_mL, refill_ratio, compression, captured_ratio } = material;
  return discParameters({
    ...{ feedDensity_g_per_mL, refill_ratio, compression, offsets, ...springOf(springs) },
    ...(captured_ratio ? { captured_ratio } : {}),
  });
}

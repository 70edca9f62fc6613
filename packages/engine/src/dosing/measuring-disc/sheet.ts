import { readingOfDepth_division } from '#fillers';
import type { DosingContext, Settings, SheetLine } from '../dosing.ts';
import { DISC_SLOT, pinKey, SPRING_SLOT } from './keys.ts';
import { setUpOf, springOf } from './set-up.ts';

/**
 * The lines of a setting sheet: parts by number, pins as scale reading and mm below the disc's top face.
 *
 * @param context - filler and shell
 * @param settings - disc, springs and depths
 * @returns disc, springs, then pins in station order
 * @throws DomainError "invalid-input" (a part that is not in stock, a missing depth), "out-of-range", "scale-unknown"
 * @source the filler's own data
 */
export function sheet(context: DosingContext, settings: Settings): readonly SheetLine[] {
  const setUp = setUpOf(context, settings);
  const { preload_N, rate_N_per_mm } = springOf(setUp.springs);
  const axis = context.filler.pins;
  const pins = axis.scales.map((scale, i): SheetLine => {
    const depth_mm = setUp.depths_mm[i] ?? 0;
    return {
      adjuster: pinKey(scale.station),
      station: scale.station,
      depth_mm,
      reading_division: readingOfDepth_division({ axis, scale, discHeight_mm: setUp.discHeight_mm }, depth_mm),
      step_division: scale.step_division,
    };
  });
  return [
    {
      ...{ adjuster: DISC_SLOT, part: setUp.disc.number, isMounted: setUp.disc.mounted ?? false },
      size: { boreDiameter_mm: setUp.boreDiameter_mm, discHeight_mm: setUp.discHeight_mm },
    },
    {
      ...{ adjuster: SPRING_SLOT, part: setUp.springs.number, isMounted: setUp.springs.mounted ?? false },
      size: { preload_N: preload_N.mean, rate_N_per_mm: rate_N_per_mm.mean },
    },
    ...pins,
  ];
}

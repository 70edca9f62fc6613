import { depthOfReading_mm, discHeight_mm, discsFor, readingOfDepth_division } from '#fillers';
import type { DosingContext, PartSwap, Settings } from '../dosing.ts';
import { DISC_SLOT, pinKey } from './keys.ts';
import { setUpOf } from './set-up.ts';

/**
 * Settings after a part is swapped. Where pins are referred to the base and the readings are left as they are, another
 * disc moves every pin whose reading is kept by the difference of the heights.
 *
 * @param context - filler and shell
 * @param settings - before the swap
 * @param swap - slot, number of the new part, and which readings are kept
 * @returns settings after the swap; a pin above the disc's top counts as flush
 * @throws DomainError "invalid-input" (a part that is not in stock), "scale-unknown"
 * @source geometry of the scale
 */
export function withPart(context: DosingContext, settings: Settings, swap: PartSwap): Settings {
  const parts = { ...settings.parts, [swap.slot]: swap.number };
  const next = discsFor(context.filler, context.shell.size).find((disc) => disc.number === swap.number);
  if (swap.slot !== DISC_SLOT || swap.readingsKept === 'none' || !next) return { ...settings, parts };
  const before = setUpOf(context, settings);
  const axis = context.filler.pins;
  const values = axis.scales.map((scale, i): [string, number] => {
    const depth_mm = before.depths_mm[i] ?? 0;
    if (depth_mm === 0 && swap.readingsKept === 'working') return [pinKey(scale.station), 0];
    const reading = readingOfDepth_division({ axis, scale, discHeight_mm: before.discHeight_mm }, depth_mm);
    const kept_mm = depthOfReading_mm({ axis, scale, discHeight_mm: discHeight_mm(next) }, reading);
    return [pinKey(scale.station), Math.max(0, Math.round(kept_mm * 1e6) / 1e6)];
  });
  return { parts, values: Object.fromEntries(values) };
}

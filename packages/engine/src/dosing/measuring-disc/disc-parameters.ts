import type { CompressionKnowledge } from '#materials';
import type { Quantity } from '#quantity';
import type { Parameter } from '../dosing.ts';
import { offsetKey } from './keys.ts';
import { lawParameters } from './law-of-values.ts';

/** What is known of everything that is uncertain about a dose from the measuring disc. */
export interface DiscKnowledge {
  readonly feedDensity_g_per_mL: Quantity;
  readonly refill_ratio: Quantity;
  readonly compression: CompressionKnowledge;
  readonly preload_N: Quantity;
  readonly rate_N_per_mm: Quantity;
  /** Scale of what a pin drags in; left out: nothing. */
  readonly captured_ratio?: Quantity;
  /** What the setting of each working pin may be off. */
  readonly offsets: readonly { readonly station: number; readonly off_mm: Quantity }[];
}

/**
 * The uncertain parameters of the measuring disc in the order of their draws.
 *
 * @param known - what is known of each
 * @returns parameters with bounds that keep a draw physical
 * @throws nothing
 * @source none: bookkeeping; see rooms `materials` and `fillers` for each prior
 */
export function discParameters(known: DiscKnowledge): readonly Parameter[] {
  const { captured_ratio } = known;
  return [
    { key: 'feedDensity_g_per_mL', prior: known.feedDensity_g_per_mL, shape: 'normal', lowest: 0.01 },
    { key: 'refill_ratio', prior: known.refill_ratio, shape: 'normal', lowest: 0 },
    ...lawParameters(known.compression),
    { key: 'springPreload_N', prior: known.preload_N, shape: 'normal', lowest: 0 },
    { key: 'springRate_N_per_mm', prior: known.rate_N_per_mm, shape: 'normal', lowest: 0 },
    ...(captured_ratio
      ? [{ key: 'captured_ratio', prior: captured_ratio, shape: 'half-normal', lowest: 0 } as const]
      : []),
    ...known.offsets.map(({ station, off_mm }): Parameter => {
      return { key: offsetKey(station), prior: off_mm, shape: 'normal' };
    }),
  ];
}

import type { InputFault } from '@fillwright/engine/catalogue';
import { conflictAt } from '#faults';
import { meanAt, textAt } from '#written';

/** Feed densities outside these shares of poured and tapped density are taken for a slip. @source common practice, no source */
const FEED_DENSITY = { ofBulk_ratio: 0.5, ofTapped_ratio: 1.6 } as const;
const MATERIAL = ['parts', 0, 'material'] as const;
const COMPRESSION = [...MATERIAL, 'compression'] as const;

/**
 * Values of a powder that contradict each other.
 *
 * @param raw - a brief of any form
 * @returns the conflicts
 */
export function powderConflicts(raw: unknown): readonly InputFault[] {
  return [...densityConflicts(raw), ...compressionConflicts(raw)];
}

function densityConflicts(raw: unknown): readonly InputFault[] {
  const density = (key: string): DensityInFile => meanAt(raw, [...MATERIAL, `${key}_g_per_mL`]);
  const [bulk, tapped, solid, feed] = [
    ...[density('bulkDensity'), density('tappedDensity'), density('trueDensity'), density('feedDensity')],
  ];
  const conflicts: InputFault[] = [];
  if (bulk !== undefined && tapped !== undefined && tapped < bulk)
    conflicts.push(
      conflictAt('tapped-below-bulk', [...MATERIAL, 'tappedDensity_g_per_mL'], {
        ...{ tapped_g_per_mL: tapped, bulk_g_per_mL: bulk },
      }),
    );
  if (solid !== undefined && tapped !== undefined && solid < tapped)
    conflicts.push(
      conflictAt('true-below-tapped', [...MATERIAL, 'trueDensity_g_per_mL'], {
        ...{ true_g_per_mL: solid, tapped_g_per_mL: tapped },
      }),
    );
  if (feed === undefined || bulk === undefined || tapped === undefined) return conflicts;
  const lowest_g_per_mL = FEED_DENSITY.ofBulk_ratio * bulk;
  const highest_g_per_mL = FEED_DENSITY.ofTapped_ratio * tapped;
  if (feed < lowest_g_per_mL || feed > highest_g_per_mL)
    conflicts.push(
      conflictAt('feed-density-implausible', [...MATERIAL, 'feedDensity_g_per_mL'], {
        ...{ feed_g_per_mL: feed, lowest_g_per_mL, highest_g_per_mL },
      }),
    );
  return conflicts;
}

/** A density in the unit of its key, g/mL. */
type DensityInFile = number | undefined;

/** A law that ends below the density at which the powder arrives says nothing about it. */
function compressionConflicts(raw: unknown): readonly InputFault[] {
  const feed_g_per_mL = meanAt(raw, [...MATERIAL, 'feedDensity_g_per_mL']);
  if (feed_g_per_mL === undefined) return [];
  const pair_g_per_mL = meanAt(raw, [...COMPRESSION, 'density_g_per_mL']);
  if (pair_g_per_mL !== undefined && pair_g_per_mL <= feed_g_per_mL)
    return [
      conflictAt('pair-below-feed', [...COMPRESSION, 'density_g_per_mL'], { ...{ pair_g_per_mL, feed_g_per_mL } }),
    ];
  const a_frac = meanAt(raw, [...COMPRESSION, 'a_frac']);
  if (textAt(raw, [...COMPRESSION, 'law']) !== 'kawakita' || a_frac === undefined || a_frac >= 1) return [];
  const start_g_per_mL = meanAt(raw, [...COMPRESSION, 'initialDensity_g_per_mL']) ?? feed_g_per_mL;
  const end_g_per_mL = start_g_per_mL / (1 - a_frac);
  if (end_g_per_mL > feed_g_per_mL) return [];
  return [
    conflictAt('compression-ends-below-feed', [...COMPRESSION, 'a_frac'], { ...{ end_g_per_mL, feed_g_per_mL } }),
  ];
}

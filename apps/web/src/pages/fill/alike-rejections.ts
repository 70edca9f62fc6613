import type { Rejection } from '@fillwright/engine/design';

/** Rejections of one size for one kind of reason: the one that was closest, and how many more. */
export interface AlikeRejections {
  readonly nearest: Rejection;
  readonly moreCount: number;
}

/**
 * Groups rejections by size and kind of reason.
 *
 * @param rejections - of the search
 * @returns one group for each, in their order
 */
export function alikeRejections(rejections: readonly Rejection[]): readonly AlikeRejections[] {
  const groups = new Map<string, Rejection[]>();
  for (const rejection of rejections) {
    const key = `${rejection.size} ${rejection.reason.code}`;
    groups.set(key, [...(groups.get(key) ?? []), rejection]);
  }
  return [...groups.values()].flatMap((alike) => {
    const [nearest] = [...alike].sort((a, b) => missOf(a) - missOf(b));
    return nearest ? [{ nearest, moreCount: alike.length - 1 }] : [];
  });
}

/** How far a rejection is from being none: the mass to the target, else the depth or length that is too much. */
function missOf({ reason: { numbers } }: Rejection): number {
  const value = (key: string): number => (typeof numbers[key] === 'number' ? numbers[key] : 0);
  const reached = value('most_mg') || value('flush_mg');
  return Math.abs(reached - value('target_mg')) + value('depth_mm') + value('released_mm');
}

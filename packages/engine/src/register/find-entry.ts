import type { Entry } from '#catalogue';
import { ROOMS } from './rooms.ts';

/** All catalogue entries, room by room. */
export const ENTRIES: readonly Entry[] = Object.values(ROOMS).flat();

const BY_ID = new Map(ENTRIES.map((entry) => [entry.id, entry]));

/**
 * The catalogue entry of an id.
 *
 * @param id - `<room>.<name>`
 * @returns the entry, or undefined when there is none
 * @throws nothing
 * @source none: bookkeeping
 */
export function findEntry(id: string): Entry | undefined {
  return BY_ID.get(id);
}

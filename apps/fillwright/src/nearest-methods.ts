import { nearestName } from '@fillwright/engine/catalogue';
import { ENTRIES } from '@fillwright/engine/register';

/**
 * Methods that may have been meant: the nearest id, and the nearest name in any room.
 *
 * @param id - what was written, with or without a room
 * @returns ids, at most a handful
 */
export function nearestMethods(id: string): string[] {
  const ids = ENTRIES.map((entry) => entry.id);
  const name = nearestName(nameOf(id), ids.map(nameOf));
  const nearest = nearestName(id, ids);
  return ids.filter((known) => known === nearest || nameOf(known) === name);
}

function nameOf(id: string): string {
  return id.slice(id.indexOf('.') + 1);
}

import { StatsError } from '#elementary';

/**
 * Place of a name in a list of allowed names.
 *
 * @param names - the allowed ones
 * @param named - one name under the name of its field
 * @returns index from 0
 * @throws StatsError "out-of-range": not in the list; its numbers hold the number of allowed names
 * @source house rule: nothing unknown is guessed
 */
export function placeIn(names: readonly string[], named: Readonly<Record<string, string>>): number {
  const [[field, name] = ['', '']] = Object.entries(named);
  const place = names.indexOf(name);
  if (place < 0) throw new StatsError('out-of-range', { [field]: Number(name), allowedCount: names.length });
  return place;
}

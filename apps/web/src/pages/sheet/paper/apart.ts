/**
 * Moves places along a line apart until none is nearer to its neighbour than it may be, all as little as can be done by
 * pairs: labels beside an axis.
 *
 * @param wanted_mm - places in any order
 * @param least_mm - least distance
 * @returns places in the same order
 */
export function apart(wanted_mm: readonly number[], least_mm: number): readonly number[] {
  const order = wanted_mm.map((_, i) => i).sort((a, b) => (wanted_mm[a] ?? 0) - (wanted_mm[b] ?? 0));
  const groups: { members: number[]; centre_mm: number }[] = [];
  for (const i of order) {
    groups.push({ members: [i], centre_mm: wanted_mm[i] ?? 0 });
    for (
      let last = groups.at(-1), before = groups.at(-2);
      last && before;
      last = groups.at(-1), before = groups.at(-2)
    ) {
      const nearest_mm = ((last.members.length + before.members.length) / 2) * least_mm;
      if (last.centre_mm - before.centre_mm >= nearest_mm) break;
      const members = [...before.members, ...last.members];
      const sum_mm = members.reduce((sum, member) => sum + (wanted_mm[member] ?? 0), 0);
      groups.splice(-2, 2, { members, centre_mm: sum_mm / members.length });
    }
  }
  const placed: number[] = [];
  for (const { members, centre_mm } of groups)
    members.forEach((member, k) => {
      placed[member] = centre_mm + (k - (members.length - 1) / 2) * least_mm;
    });
  return placed;
}

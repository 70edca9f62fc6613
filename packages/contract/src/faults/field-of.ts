/**
 * The name of a field in faults: its path joined by points.
 *
 * @param path - keys and indices
 * @returns for example `parts.0.material.bulkDensity_g_per_mL`
 */
export function fieldOf(path: readonly PropertyKey[]): string {
  return path.map(String).join('.');
}

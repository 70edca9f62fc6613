/** Mean mass of the shells weighed, with its standard error. */
interface TareOfShells {
  readonly mean_mg: number;
  readonly sd_mg: number;
  readonly shellCount: number;
  readonly standardError_mg: number;
}

/**
 * The tare of some empty shells.
 *
 * @param shells_mg - weighed one by one
 * @returns mean, spread (NaN for one shell) and standard error of the mean
 * @throws nothing
 * @source textbook, n - 1 form
 */
export function tareOfShells(shells_mg: readonly number[]): TareOfShells {
  const shellCount = shells_mg.length;
  const mean_mg = shells_mg.reduce((sum, mass_mg) => sum + mass_mg, 0) / shellCount;
  const squares = shells_mg.reduce((sum, mass_mg) => sum + (mass_mg - mean_mg) * (mass_mg - mean_mg), 0);
  const sd_mg = shellCount > 1 ? Math.sqrt(squares / (shellCount - 1)) : NaN;
  return { mean_mg, sd_mg, shellCount, standardError_mg: sd_mg / Math.sqrt(shellCount) };
}

import type { ShellRecord } from '#shells';
import type { BriefShell } from './brief.ts';

/** Empty shells as the card uses them. */
export interface Tare {
  readonly mean_mg: number;
  readonly sd_mg: number;
  /** Shells weighed; 0 when the figure is trade custom. */
  readonly shellCount: number;
  /** Standard error of the mean; left out when no shell was weighed. */
  readonly standardError_mg?: number;
  readonly lot?: string;
  readonly basis: 'measured' | 'guess';
}

/** The printed tolerance of a shell's mass is read as three standard deviations. @source common practice, no source */
const SDS_IN_TOLERANCE = 3;

/**
 * The tare of a shell: of the lot weighed, else the figure of trade custom, called a guess.
 *
 * @param shell - the brief's shell, with its lot if weighed
 * @param record - the size's figures
 * @returns the tare, or undefined when neither is known
 * @throws nothing
 * @source lot: the site's weighing; else trade custom with tolerance / 3 as sd (common practice, no source)
 */
export function tareOf(shell: BriefShell, record: ShellRecord): Tare | undefined {
  if (shell.mass_mg) {
    const { mean, sd, n } = shell.mass_mg;
    const lot = shell.lot === undefined ? {} : { lot: shell.lot };
    return { mean_mg: mean, sd_mg: sd, shellCount: n, standardError_mg: sd / Math.sqrt(n), ...lot, basis: 'measured' };
  }
  const figure = record.gelatinMass_mg ?? record.hpmcMass_mg;
  if (!figure) return undefined;
  return { mean_mg: figure.value, sd_mg: figure.plusMinus / SDS_IN_TOLERANCE, shellCount: 0, basis: 'guess' };
}

import { SHELL_SIZES, type ShellSizeRecord } from './shell-sizes.table.ts';

/**
 * Looks up a size in the table of shells.
 *
 * @param name - as in SHELL_SIZE_NAMES; `00` is not `0`, a number is not a name
 * @returns the record, or undefined when there is no such size
 * @throws nothing
 * @source table `SHELL_SIZES`
 * @example findShellSize('00')?.bodyVolume_mm3?.value // 950
 */
export function findShellSize(name: string): ShellSizeRecord | undefined {
  return SHELL_SIZES.records.find((record) => record.size === name);
}

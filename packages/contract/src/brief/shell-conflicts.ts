import { nearestName, type InputFault } from '@fillwright/engine/catalogue';
import { findShellSize, SHELL_SIZE_NAMES, type ShellRecord } from '@fillwright/engine/shells';
import { conflictAt, fieldOf } from '#faults';
import { itemsAt, meanAt, repeatsIn, textAt, valueAt } from '#written';
import { targetMass_mg } from './target-mass.ts';

/** Denser than any organic powder: what even a body full of solid could not hold is a slip. @source common practice, no source */
const DENSEST_g_per_mL = 3;

/** Records of the shells that the brief names by file, by the path as written. */
export type OwnShells = ReadonlyMap<string, ShellRecord>;

/**
 * Shells of a brief that contradict the table, their own file, or the target.
 *
 * @param raw - a brief of any form
 * @param own - records read from files; a file that could not be read is left out
 * @returns the conflicts
 */
export function shellConflicts(raw: unknown, own: OwnShells): readonly InputFault[] {
  const shells = itemsAt(raw, ['shells']);
  const sizes = shells.map((shell) => textAt(shell, ['size']));
  const twice = repeatsIn(sizes).map(({ name, index }) =>
    conflictAt('shell-twice', ['shells', index, 'size'], { size: name }),
  );
  const unknown = shells.flatMap((shell, index) => sizeFaults(shell, { index, own }));
  return [...twice, ...unknown, ...capacityConflicts(raw, own)];
}

function sizeFaults(shell: unknown, { index, own }: { index: number; own: OwnShells }): readonly InputFault[] {
  const size = textAt(shell, ['size']);
  if (size === undefined) return [];
  const path = ['shells', index, 'size'];
  const file = textAt(shell, ['record']);
  if (file !== undefined) {
    const inFile = own.get(file)?.size;
    return inFile === undefined || inFile === size ? [] : [conflictAt('record-of-other-size', path, { size, inFile })];
  }
  if (valueAt(shell, ['record']) !== undefined || findShellSize(size)) return [];
  const nearest = nearestName(size, SHELL_SIZE_NAMES);
  const allowed = `${SHELL_SIZE_NAMES.join(', ')}; another size needs its record`;
  return [
    { code: 'not-a-choice', field: fieldOf(path), value: size, allowed, ...(nearest === undefined ? {} : { nearest }) },
  ];
}

/** A target that the largest body could not hold even as a solid. Said only when the volume of every shell is known. */
function capacityConflicts(raw: unknown, own: OwnShells): readonly InputFault[] {
  const target_mg = targetMass_mg(raw);
  const bodies = itemsAt(raw, ['shells']).map((shell) => bodyOf(shell, own));
  if (target_mg === undefined || bodies.length === 0 || bodies.includes(undefined)) return [];
  const largest = bodies.flatMap((body) => body ?? []).reduce((a, b) => (b.volume_mm3 > a.volume_mm3 ? b : a));
  const density_g_per_mL = meanAt(raw, ['parts', 0, 'material', 'trueDensity_g_per_mL']) ?? DENSEST_g_per_mL;
  if (!(density_g_per_mL > 0)) return [];
  // mm3 x g/mL = mg: 1 g/mL is 1 mg/mm3.
  const most_mg = largest.volume_mm3 * density_g_per_mL;
  if (target_mg <= most_mg) return [];
  return [
    conflictAt('target-above-body', ['parts', 0, 'target'], { target_mg, most_mg, ...largest, density_g_per_mL }),
  ];
}

function bodyOf(shell: unknown, own: OwnShells): { size: string; volume_mm3: number } | undefined {
  const size = textAt(shell, ['size']);
  const file = textAt(shell, ['record']);
  const figure = (file === undefined ? findShellSize(size ?? '') : own.get(file))?.bodyVolume_mm3;
  return size === undefined || figure === undefined ? undefined : { size, volume_mm3: figure.value + figure.plusMinus };
}

import type { ValuePath } from '@fillwright/contract/files';

/**
 * The faults of one value.
 *
 * @param faults - all faults
 * @param path - where the value stands
 * @param reach - `within`: also what is wrong inside it, such as `mean` of a density; `itself`: not
 * @returns those that belong to it
 */
export function faultsAt<Fault extends { readonly field: string }>(
  faults: readonly Fault[],
  path: ValuePath,
  reach: 'itself' | 'within',
): readonly Fault[] {
  const field = path.join('.');
  return faults.filter((fault) => fault.field === field || (reach === 'within' && fault.field.startsWith(`${field}.`)));
}

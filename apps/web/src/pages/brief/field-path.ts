import type { ValuePath } from '@fillwright/contract/files';

/** @returns the path of a fault's field: numbers are list positions */
export function pathOf(field: string): ValuePath {
  return field === '' ? [] : field.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step));
}

/** @returns the id of the control of a value, so that a fault can lead to it */
export function controlId(path: ValuePath): string {
  return `brief-${path.join('-')}`;
}

/** @returns what kind of value stands at a path, whatever its position in lists: `parts.target.substances.claim_mg` */
export function fieldKind(path: ValuePath): string {
  return path.filter((step) => typeof step === 'string').join('.');
}

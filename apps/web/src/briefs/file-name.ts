import type { FileDocument } from '@fillwright/contract/documents';

/** @returns the file name under which a brief finds a kept filler or shell: `two-shift.filler.yaml` */
export function fileName({ kind, id }: FileDocument): string {
  return `${id}.${kind}.yaml`;
}

import { itemsAt, textAt } from '#written';
import { FILLER_PATH, SHELL_PATH } from './path-patterns.ts';

/** A file that a brief names: where it is named, and its path as written. */
export interface Reference {
  readonly kind: 'filler' | 'shell';
  readonly path: readonly PropertyKey[];
  readonly file: string;
}

/**
 * The files that a brief names, however wrong the rest of it is.
 *
 * @param raw - a brief of any form
 * @returns filler and shell files, in the order of the document
 */
export function briefReferences(raw: unknown): readonly Reference[] {
  const shells = itemsAt(raw, ['shells']).map((shell, index) =>
    reference('shell', ['shells', index, 'record'], textAt(shell, ['record'])),
  );
  return [...shells, reference('filler', ['filler'], textAt(raw, ['filler']))].filter((found) => found !== undefined);
}

const PATTERNS = { filler: new RegExp(`^${FILLER_PATH}$`), shell: new RegExp(`^${SHELL_PATH}$`) };

function reference(
  kind: Reference['kind'],
  path: readonly PropertyKey[],
  file: string | undefined,
): Reference | undefined {
  return file !== undefined && PATTERNS[kind].test(file) ? { kind, path, file } : undefined;
}

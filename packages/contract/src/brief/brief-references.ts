import { itemsAt, textAt } from '#written';

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
  const filler = textAt(raw, ['filler']);
  const shells = itemsAt(raw, ['shells']).flatMap((shell, index): Reference[] => {
    const file = textAt(shell, ['record']);
    return file?.endsWith('.shell.yaml') ? [{ kind: 'shell', path: ['shells', index, 'record'], file }] : [];
  });
  return [
    ...shells,
    ...(filler?.endsWith('.filler.yaml') ? [{ kind: 'filler' as const, path: ['filler'], file: filler }] : []),
  ];
}

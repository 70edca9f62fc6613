import { isCollection, parseDocument } from 'yaml';

/** Where a value stands: keys and list positions from the top; no unit. */
export type ValuePath = readonly (string | number)[];

/**
 * The text of a YAML file with one value changed: comments, order and layout of everything else stay.
 *
 * @param text - the file's text
 * @param path - where the value stands; missing mappings on the way are made
 * @param value - the new value, of any plain kind; undefined removes the key, and mappings that become empty with it
 * @returns the new text; the text as it was when it cannot be read as YAML
 */
export function changedText(text: string, path: ValuePath, value: unknown): string {
  const document = parseDocument(text);
  if (document.errors.length > 0) return text;
  if (value === undefined) {
    document.deleteIn(path);
    removeEmptied(document, path.slice(0, -1));
  } else document.setIn(path, document.createNode(value, { flow: path.length > 2 && typeof value === 'object' }));
  return document.toString({ lineWidth: 120, flowCollectionPadding: true });
}

function removeEmptied(document: ReturnType<typeof parseDocument>, path: ValuePath): void {
  if (path.length === 0) return;
  const left: unknown = document.getIn(path, true);
  if (!isCollection(left) || left.items.length > 0) return;
  document.deleteIn(path);
  removeEmptied(document, path.slice(0, -1));
}

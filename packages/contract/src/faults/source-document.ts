/** A document as plain data, and how its values were written. */
export interface SourceDocument {
  readonly value: unknown;
  /** What stands in the text at a path, where that is known: `00` where the value is 0. */
  readonly textAt?: (path: readonly PropertyKey[]) => string | undefined;
}

/** One step of the form of the store. Numbered from 1 without gaps; a step that was released is never changed. */
export interface Migration {
  readonly number: number;
  /** One statement each. */
  readonly statements: readonly string[];
}

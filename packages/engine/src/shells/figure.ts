/** A number in the unit of the key the figure stands under. */
export type InUnitOfKey = number;

/** A table value with the half-width within which it is expected, and where both come from. */
export interface Figure {
  readonly value: InUnitOfKey;
  readonly plusMinus: InUnitOfKey;
  readonly source: string;
}

/**
 * The unit of a field whose entry only says that it is that of the data.
 *
 * @param unit - of the entry's field
 * @param ofData - the unit of the data at hand; left out: it stays unsaid
 * @returns the unit to write
 */
export function unitOfData(unit: string, ofData: string | undefined): string {
  if (unit === 'data') return ofData ?? '1';
  if (unit === 'data2') return ofData === undefined ? '1' : `${ofData}\u00B2`;
  return unit;
}

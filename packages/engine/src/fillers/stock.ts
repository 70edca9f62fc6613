import type { DiscPart, Filler, SpringPart } from './filler.ts';

/**
 * The discs in stock that may be used for a shell size, lowest first.
 *
 * @param filler - the filler with its inventory
 * @param size - shell size
 * @returns discs for the size, condition other than `do-not-use`
 * @throws never
 * @source none: bookkeeping
 */
export function discsFor(filler: Filler, size: string): readonly DiscPart[] {
  return filler.parts
    .filter(
      (part): part is DiscPart =>
        part.kind === 'disc' && part.forSizes.includes(size) && part.condition !== 'do-not-use',
    )
    .sort((a, b) => discHeight_mm(a) - discHeight_mm(b));
}

/**
 * The spring sets in stock, mounted first.
 *
 * @param filler - the filler with its inventory
 * @returns spring sets, condition other than `do-not-use`
 * @throws never
 * @source none: bookkeeping
 */
export function springSets(filler: Filler): readonly SpringPart[] {
  return filler.parts
    .filter((part): part is SpringPart => part.kind === 'spring-set' && part.condition !== 'do-not-use')
    .sort((a, b) => Number(b.mounted ?? false) - Number(a.mounted ?? false));
}

/**
 * Height of a disc: as measured, else nominal.
 *
 * @param disc - the part
 * @returns height, mm
 * @throws never
 * @source the inventory
 */
export function discHeight_mm(disc: DiscPart): number {
  return disc.heightMeasured_mm ?? disc.heightNominal_mm;
}

/**
 * Bore of a disc: as measured, else nominal.
 *
 * @param disc - the part
 * @returns bore diameter, mm
 * @throws never
 * @source the inventory
 */
export function discBore_mm(disc: DiscPart): number {
  return disc.boreMeasured_mm ?? disc.boreNominal_mm;
}

/**
 * Whether the filler stands ready for a shell size: a mounted part serves it.
 *
 * @param filler - the filler with its inventory
 * @param size - shell size
 * @returns true when no change of size is needed
 * @throws never
 * @source none: bookkeeping
 */
export function isSizeMounted(filler: Filler, size: string): boolean {
  return filler.parts.some((part) => part.kind === 'disc' && part.mounted === true && part.forSizes.includes(size));
}

export { entries } from './entries.ts';
export type { DiscPart, Filler, PinAxis, Range_mm, SpringPart, StationScale } from './filler.ts';
export { GENERIC_FILLER } from './generic-filler.table.ts';
export { depthOfReading_mm, readingOfDepth_division } from './scale.ts';
export { discBore_mm, discHeight_mm, discsFor, isSizeMounted, springSets } from './stock.ts';

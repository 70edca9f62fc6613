import { quantityForReading } from '@fillwright/words/numbers';

/** @returns a unit as a screen shows it: `mm³` for `mm3`, nothing for `1` */
export function unitText(unit: string): string {
  return quantityForReading(0, unit, { decimals: 0 }).slice(1).trim();
}

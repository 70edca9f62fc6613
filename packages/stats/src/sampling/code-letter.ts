import { requireWhole } from '#elementary';
import type { Letter, Level } from './inspection-tables.ts';
import { CODE_LETTERS, GREATEST_LOTS, LEVELS } from './inspection-tables.ts';
import { placeIn } from './place-in.ts';

export interface LotAndLevel {
  /** Units in the lot, from 2. */
  readonly lotSize: number;
  readonly level: Level;
}

/**
 * Sample size code letter of a lot.
 *
 * @param lot - units in it and inspection level
 * @returns letter A..R
 * @throws StatsError "not-finite", "not-whole", "out-of-range" (lot below 2, no such level)
 * @source ISO 2859-1:1999 Table 1 = MIL-STD-105E Table I; 105 cells checked against a transcription
 */
export function codeLetter({ lotSize, level }: LotAndLevel): Letter {
  requireWhole({ lotSize }, { min: 2 });
  const row = GREATEST_LOTS.findIndex((greatest) => lotSize <= greatest);
  return CODE_LETTERS.at(row)![placeIn(LEVELS, { level })] as Letter;
}

import { COLUMN_WORDS } from './line-words.table.ts';
import type { MassUnit } from './weights-read.ts';

/** What a column holds. `mass` is gross, net or shell as the caller says; `none` is known and not used. */
export type ColumnName =
  'gross' | 'net' | 'shell' | 'mass' | 'group' | 'column' | 'carrier' | 'bore' | 'stroke' | 'time' | 'none';

export interface ColumnHeading {
  /** Left out: a heading that is not known. */
  readonly name?: ColumnName;
  readonly unit?: MassUnit;
  /** A unit that is not taken. */
  readonly otherUnit?: string;
  readonly written: string;
}

const UNIT_AT_END = /[\s_,]*[([]?\s*(?:in\s+)?(?<![\p{L}\d])([mM][gG]|g|kg|ug|µg|μg|oz|gr)\s*[)\]]?$/u;

/**
 * Reads the heading of a column: a plain word, with its unit or without.
 *
 * @param written - for example `Gross (mg)`, `shell_mg`, `dosing group`
 * @returns the column's name and unit, where they are known
 */
export function columnHeading(written: string): ColumnHeading {
  const text = written.trim();
  const spaced = text.replaceAll('_', ' ');
  const unit = UNIT_AT_END.exec(spaced)?.[1];
  const bare = spaced.replace(UNIT_AT_END, '').replace(/[.:]$/, '').trim().toLowerCase();
  const name = bare === '' && unit !== undefined ? 'mass' : knownName(bare);
  return {
    written: text,
    ...(name === undefined ? {} : { name }),
    ...(unit === undefined ? {} : /^mg$|^g$/.test(unit.toLowerCase()) ? { unit: massUnit(unit) } : { otherUnit: unit }),
  };
}

function massUnit(unit: string): MassUnit {
  return unit.toLowerCase() === 'mg' ? 'mg' : 'g';
}

function knownName(bare: string): ColumnName | undefined {
  return Object.hasOwn(COLUMN_WORDS, bare) ? (COLUMN_WORDS[bare] as ColumnName) : undefined;
}

import type { WeighedPlace, WeightsFault } from '@fillwright/engine/weights';
import type { ParsedCell } from './parsed-cell.ts';
import type { MassUnit, WeightBasis } from './weights-read.ts';

/** A line that was read: masses in mg, or struck. */
export interface RowRead {
  readonly line: number;
  readonly raw: string;
  readonly read:
    | {
        readonly kind: 'row';
        readonly mass_mg: number | undefined;
        readonly shell_mg: number | undefined;
        readonly place: WeighedPlace | undefined;
        readonly time: string | undefined;
      }
    | Extract<ParsedCell, { kind: 'struck' }>;
}

/** All lines, and what holds for the whole text. */
export interface RowsRead {
  readonly rows: readonly RowRead[];
  readonly faults: readonly WeightsFault[];
  readonly basis: WeightBasis;
  readonly unit?: MassUnit;
  readonly ignoredColumns: readonly string[];
}

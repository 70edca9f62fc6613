import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Inspection, Level, Scheme } from '#sampling';
import { AQLS, codeLetter, doublePlan, LEVELS, singlePlan } from '#sampling';

interface Cell {
  readonly letter: string;
  readonly n: number;
  readonly ac: number;
  readonly re: number;
}
type DoubleCell = { readonly letter: string; readonly n1: number } & Readonly<Record<string, number | string>>;
type Table<C> = Readonly<Record<string, readonly C[]>>;
interface Tables {
  readonly lot_sizes: readonly (readonly [number, number | null])[];
  readonly levels: readonly Level[];
  readonly code_letters: readonly (readonly string[])[];
  readonly letters: readonly string[];
  readonly aql: readonly string[];
  readonly resolved: Readonly<Record<Inspection, Table<Cell>>>;
  readonly reduced_105e_resolved: Table<Cell>;
  readonly double_105e: Readonly<Record<Inspection, Table<DoubleCell>>>;
}
/** Transcription of the printed tables, made outside this project; its own notes say from which ones. */
const path = new URL('../../golden/attribute_sampling_tables.json', import.meta.url);
const tables = JSON.parse(readFileSync(path, 'utf8')) as Tables;

/** A lot, far larger than any sample where there is one, that gets this letter, and the level at which it does. */
function lotOf(letter: string): { lotSize: number; level: Level } {
  for (let row = tables.lot_sizes.length - 1; row >= 0; row--) {
    const place = tables.code_letters[row]!.indexOf(letter);
    if (place >= 0) return { lotSize: tables.lot_sizes[row]![1] ?? 1e6, level: tables.levels[place]! };
  }
  throw new Error(letter);
}
const places = tables.letters.flatMap((letter) => tables.aql.map((aql, column) => ({ letter, aql, column })));

function expectSingle(table: Table<Cell>, { inspection, scheme }: { inspection: Inspection; scheme: Scheme }): number {
  for (const { letter, aql, column } of places) {
    const { lotSize, level } = lotOf(letter);
    const { planLetter, n, ac, re } = singlePlan({ lotSize, level, aql, inspection, scheme });
    const cell = table[letter]![column]!;
    const found = { letter: planLetter, n, ac, re };
    expect({ at: `${letter} ${aql}`, ...found }).toEqual({
      at: `${letter} ${aql}`,
      ...cell,
      n: Math.min(cell.n, lotSize),
    });
  }
  return places.length;
}

describe('codeLetter', () => {
  test('golden: ISO 2859-1 Table 1, the 105 cells at both ends of their lot sizes', () => {
    for (const [row, [least, greatest]] of tables.lot_sizes.entries()) {
      for (const [place, level] of tables.levels.entries()) {
        const letter = tables.code_letters[row]![place];
        expect(codeLetter({ lotSize: least, level })).toBe(letter);
        expect(codeLetter({ lotSize: greatest ?? 1e9, level })).toBe(letter);
      }
    }
  });
  test.each([
    [{ lotSize: 1, level: 'II' as const }, 'out-of-range: lotSize=1 min=2'],
    [{ lotSize: NaN, level: 'II' as const }, 'not-finite: lotSize'],
    [{ lotSize: 10.5, level: 'II' as const }, 'not-whole: lotSize'],
    [{ lotSize: 10, level: 'IV' as Level }, 'out-of-range: level'],
  ])('refuses: %o -> %s', (lot, message) => {
    expect(() => codeLetter(lot)).toThrow(message);
  });
});

describe('singlePlan', () => {
  test.each(['normal', 'tightened', 'reduced'] as const)('golden: ISO 2859-1 %s, all 416 cells', (inspection) => {
    expect(expectSingle(tables.resolved[inspection], { inspection, scheme: 'ISO 2859-1' })).toBe(416);
  });
  test('golden: MIL-STD-105E Table II-C, all 416 cells with their gaps', () => {
    expect(expectSingle(tables.reduced_105e_resolved, { inspection: 'reduced', scheme: 'MIL-STD-105E' })).toBe(416);
  });
  test('golden: the one tightened cell that differs: A, AQL 10 is 2/0 in ISO 2859-1, an arrow to D 8/1 in MIL-STD-105E', () => {
    const wanted = { lotSize: 100, level: 'S-1', aql: '10', inspection: 'tightened' } as const;
    const small = { ...wanted, lotSize: 50 };
    expect(singlePlan(small)).toMatchObject({ codeLetter: 'A', planLetter: 'A', n: 2, ac: 0 });
    expect(singlePlan({ ...small, scheme: 'MIL-STD-105E' })).toMatchObject({ planLetter: 'D', n: 8, ac: 1, re: 2 });
    expect(singlePlan(wanted)).toMatchObject({ codeLetter: 'B', planLetter: 'D', n: 8, ac: 1 });
  });
  test('regression: an arrow moves the sample size too', () => {
    const wanted = { lotSize: 1000, level: 'II', aql: '0.25', inspection: 'normal' } as const;
    expect(singlePlan(wanted)).toMatchObject({ codeLetter: 'J', planLetter: 'H', n: 50, ac: 0 });
  });
  test('limit: a sample as large as the lot is the lot; AQL above 10 counts nonconformities only', () => {
    const wanted = { lotSize: 50, level: 'II', aql: '0.25', inspection: 'normal' } as const;
    expect(singlePlan(wanted)).toMatchObject({ n: 50, inspectAll: true, isForNonconformitiesOnly: false });
    expect(singlePlan({ ...wanted, lotSize: 51 })).toMatchObject({ n: 50, inspectAll: false });
    expect(singlePlan({ ...wanted, aql: '15' }).isForNonconformitiesOnly).toBe(true);
  });
  test('property: never more units than the lot, Re above Ac, a better AQL never lets more through', () => {
    const wanted = fc.record({
      lotSize: fc.integer({ min: 2, max: 2e6 }),
      level: fc.constantFrom(...LEVELS),
      inspection: fc.constantFrom('normal', 'tightened', 'reduced'),
    });
    fc.assert(
      fc.property(wanted, fc.nat(24), (lot, column) => {
        const at = (aql: string) => singlePlan({ ...lot, aql });
        const strict = at(AQLS[column]!);
        const mild = at(AQLS[column + 1]!);
        expect(strict.n).toBeLessThanOrEqual(lot.lotSize);
        expect(strict.re).toBe(strict.ac + 1);
        expect(strict.ac * mild.n).toBeLessThanOrEqual(mild.ac * strict.n);
      }),
      { seed: 51 },
    );
  });
  test('refuses: an AQL that is not printed is not rounded to one', () => {
    const wanted = { lotSize: 50, level: 'II', aql: '0.3', inspection: 'normal' } as const;
    expect(() => singlePlan(wanted)).toThrow('out-of-range: aql=0.3');
    expect(() => singlePlan({ ...wanted, aql: 'NaN' })).toThrow('out-of-range: aql=NaN');
  });
});

describe('doublePlan', () => {
  test.each(['normal', 'tightened', 'reduced'] as const)(
    'golden: MIL-STD-105E double %s, AQL up to 10',
    (inspection) => {
      for (const { letter, aql, column } of places.filter((place) => place.column <= 15)) {
        const { use, ...cell } = tables.double_105e[inspection][letter]![column]! as Record<string, unknown>;
        const { kind, plan } = doublePlan({ ...lotOf(letter), aql, inspection });
        const { letter: planLetter, ...numbers } = cell;
        expect({ at: `${letter} ${aql}`, kind, ...plan }).toMatchObject({
          ...{ at: `${letter} ${aql}`, kind: use ?? 'double', planLetter },
          ...numbers,
        });
      }
    },
  );
  test('limit: both samples together reach the lot: inspect all', () => {
    const wanted = { level: 'II', aql: '1.0', inspection: 'normal' } as const;
    expect(doublePlan({ ...wanted, lotSize: 200 })).toMatchObject({ plan: { n1: 32, inspectAll: false } });
    const tiny = { ...wanted, level: 'III', aql: '10' } as const;
    expect(doublePlan({ ...tiny, lotSize: 6 })).toMatchObject({ plan: { n1: 3, n2: 3, inspectAll: true } });
    expect(doublePlan({ ...tiny, lotSize: 7 })).toMatchObject({ plan: { n1: 3, n2: 3, inspectAll: false } });
  });
  test('refuses: AQL above 10', () => {
    const wanted = { lotSize: 500, level: 'II', aql: '15', inspection: 'normal' } as const;
    expect(() => doublePlan(wanted)).toThrow('out-of-range: aql=15 max=10');
  });
});

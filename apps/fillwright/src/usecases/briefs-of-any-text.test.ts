import { briefSchema } from '@fillwright/contract/brief';
import { documentSchemas } from '@fillwright/contract/schemas';
import { search } from '@fillwright/engine/design';
import { formatFaults } from '@fillwright/words/en';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { readBrief, type BriefRead } from '@fillwright/contract/files';

const ALDER = readFileSync(new URL('../../../../examples/alder-200.brief.yaml', import.meta.url), 'utf8');

function read(text: string): Promise<BriefRead> {
  const readText = (path: string): Promise<string> =>
    path === 'a.brief.yaml' ? Promise.resolve(text) : Promise.reject(new Error(path));
  return readBrief({ path: 'a.brief.yaml', readText });
}

function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

/** Whatever was read: data without NaN, or faults that can be told in whole sentences with places. */
async function judge(text: string): Promise<void> {
  const result = await read(text);
  if (result.ok) {
    expect(numbersIn(result).every(Number.isFinite)).toBe(true);
    return;
  }
  expect(result.faults.length).toBeGreaterThan(0);
  const told = formatFaults(result.faults);
  expect(told).not.toMatch(/undefined|\bNaN\b.*NaN|\[object/);
  for (const { line } of result.faults) expect(line === undefined || line >= 1).toBe(true);
}

/** Pieces that break numbers, keys and structure. */
const SCRAP = fc.constantFrom(
  '',
  ',',
  '.',
  ':',
  '\n',
  '\t',
  '- ',
  '{',
  '}',
  '[',
  ']',
  '"',
  "'",
  '-',
  '.nan',
  '.inf',
  '00',
  '1e999',
  '&a',
  '*a',
  '!!',
  '<<',
  '  ',
  '0,5',
  '1 000',
  '~',
  '#',
);

describe('readBrief on any text', () => {
  test('property: garbage never throws and is never taken for a brief', async () => {
    const garbage = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 200 }),
      fc.json(),
      fc.array(SCRAP).map((pieces) => pieces.join('')),
    );
    await fc.assert(
      fc.asyncProperty(garbage, async (text) => {
        expect((await read(text)).ok).toBe(false);
        await judge(text);
      }),
      { seed: 1, numRuns: 500 },
    );
  });
  test('property: a damaged brief never throws, and no NaN comes out of it', async () => {
    const damage = fc.record({ at: fc.nat(ALDER.length - 1), length: fc.nat(12), scrap: SCRAP });
    await fc.assert(
      fc.asyncProperty(fc.array(damage, { minLength: 1, maxLength: 3 }), (damages) =>
        judge(
          damages.reduce((text, { at, length, scrap }) => text.slice(0, at) + scrap + text.slice(at + length), ALDER),
        ),
      ),
      { seed: 1, numRuns: 500 },
    );
  });

  test('property: a brief made of allowed values reads back as what was written', async () => {
    const density = fc.integer({ min: 100, max: 900 }).map((thousandths) => thousandths / 1000);
    const known = fc.oneof(
      density.map((value) => ({
        written: value,
        read: { basis: 'measured', mean: value, sd: 0.02 * value, n: 1, sdAssumed: true },
      })),
      fc
        .record({
          mean: density,
          sd: fc.integer({ min: 0, max: 50 }).map((n) => n / 1000),
          n: fc.integer({ min: 1, max: 99 }),
        })
        .map((spread) => ({ written: spread, read: { basis: 'measured', ...spread } })),
    );
    const values = fc.record({
      bulk: known,
      claim_mg: fc.integer({ min: 1, max: 3000 }).map((tenths) => tenths / 10),
      sampleCount: fc.integer({ min: 1, max: 1000 }),
      size: fc.constantFrom('00', '0', '0el', '1'),
      name: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 30 }).filter((text) => /\S/.test(text)),
    });
    await fc.assert(
      fc.asyncProperty(values, async ({ bulk, claim_mg, sampleCount, size, name }) => {
        const tapped = bulk.read.mean * 1.25;
        const target = { rule: 'fixed-fill', fill_mg: claim_mg + 5, substances: [{ name, claim_mg }] };
        const rest = {
          product: { code: 'FW-X', name },
          shells: [{ size }],
          filler: 'generic',
          inProcess: { sampleCount, meanAction_pct: 3, individualAction_pct: 7.5 },
          route: [{ test: 'uniformity-of-mass', use: 'release' }],
        };
        const material = {
          bulkDensity_g_per_mL: bulk.written,
          tappedDensity_g_per_mL: { mean: tapped, sd: 0.01, n: 3 },
          refill_ratio: 'guess',
        };
        const text = stringify({ format: 1, parts: [{ name, dose: 'powder', target, material }], ...rest });
        const result = await read(text);
        if (!result.ok) throw new Error(JSON.stringify(result.faults));
        const facts = {
          bulkDensity_g_per_mL: bulk.read,
          tappedDensity_g_per_mL: { basis: 'measured', mean: tapped, sd: 0.01, n: 3 },
        };
        expect(result.brief).toEqual({
          format: 1,
          parts: [{ name, dose: 'powder', target, material: facts }],
          ...rest,
        });
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test('property: whatever is accepted can be searched, and no NaN comes out of it', async () => {
    const places = placesIn(parse(ALDER)).filter((place) => typeof valueAt(parse(ALDER), place) === 'number');
    const change = fc.record({
      place: fc.constantFrom(...places),
      factor: fc.constantFrom(0, 0.1, 0.5, 0.9, 1.1, 1.5, 3, 20),
    });
    let searched = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 4 }), async (changes) => {
        const brief = parse(ALDER) as unknown;
        for (const { place, factor } of changes)
          put(brief, place, Number((factor * Number(valueAt(brief, place))).toPrecision(4)));
        const result = await read(stringify(brief));
        if (!result.ok) return;
        searched += 1;
        expect(numbersIn(search({ ...result, seed: 1 })).every(Number.isFinite)).toBe(true);
      }),
      { seed: 1, numRuns: 150 },
    );
    expect(searched).toBeGreaterThan(25);
  });

  test('property: schema for editors and reader agree on the form of a brief (checked with an independent validator)', () => {
    const validate = new Ajv2020({ validateFormats: false }).compile(documentSchemas()['brief.schema.json'] as object);
    const brief = parse(ALDER) as object;
    const places = placesIn(brief);
    const other = fc.oneof(
      fc.constantFrom(-1, 0, 0.5, 1, 3, 101, 5000, '', 'guess', '0', 'x', true, null, [], {}),
      fc.jsonValue(),
    );
    fc.assert(
      fc.property(fc.constantFrom(...places), other, (place, value) => {
        const changed = structuredClone(brief);
        put(changed, place, value);
        expect(briefSchema.safeParse(changed).success).toBe(validate(changed));
      }),
      { seed: 1, numRuns: 3000 },
    );
  });
});

/** Paths of everything in a document. */
function placesIn(value: unknown): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [[key], ...placesIn(inner).map((path) => [key, ...path])]);
}

function valueAt(value: unknown, place: readonly string[]): unknown {
  return place.reduce<unknown>((at, key) => (at as Readonly<Record<string, unknown>>)[key], value);
}

function put(document: unknown, place: readonly string[], value: unknown): void {
  (valueAt(document, place.slice(0, -1)) as Record<string, unknown>)[place.at(-1) ?? ''] = value;
}

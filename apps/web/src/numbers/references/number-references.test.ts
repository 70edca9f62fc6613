import { readFileSync } from 'node:fs';
import { computeEntry } from '@fillwright/engine/catalogue';
import { candidateAt, detailsOf, placesOf, search, type Candidate, type SearchInput } from '@fillwright/engine/design';
import { targetFill } from '@fillwright/engine/brief';
import type { CompressionKnowledge, PowderFacts } from '@fillwright/engine/materials';
import { findEntry } from '@fillwright/engine/register';
import { readBrief } from '@fillwright/contract/files';
import { describe, expect, test } from 'vitest';
import type { NumberReference, NumberReferences } from '../number-reference.ts';
import { numberReferences } from './number-references.ts';

const EXAMPLES = new URL('../../../../../examples/', import.meta.url);

async function example(name: string): Promise<SearchInput> {
  const read = await readBrief({
    path: name,
    readText: (path) => Promise.resolve(readFileSync(new URL(path, EXAMPLES), 'utf8')),
  });
  if (!read.ok) throw new Error(`${name} cannot be read`);
  const { brief, filler, shells } = read;
  return { brief, filler, shells, seed: 1 };
}

/** References of settings, with their details, at the first place of the brief. */
function referencesAt(input: SearchInput, settings: Candidate['settings']): NumberReferences {
  const [place] = placesOf(input).places;
  if (!place) throw new Error('no place');
  const candidate = candidateAt(input, place, settings);
  const target = targetFill(input.brief.parts[0].target);
  return numberReferences(candidate, detailsOf(input, place, { candidate, target }), input);
}

function withPowder(input: SearchInput, change: Partial<PowderFacts>): SearchInput {
  const [part] = input.brief.parts;
  return { ...input, brief: { ...input.brief, parts: [{ ...part, material: { ...part.material, ...change } }] } };
}

function withoutLaw(input: SearchInput): SearchInput {
  const { compression: _, feedDensity_g_per_mL: __, ...material } = input.brief.parts[0].material;
  return { ...input, brief: { ...input.brief, parts: [{ ...input.brief.parts[0], material }] } };
}

function recomputed({ entry, inputs, output, item }: NumberReference): unknown {
  const found = findEntry(entry);
  if (!found) throw new Error(`no entry ${entry}`);
  const computed = computeEntry(found, inputs);
  if (!computed.ok) throw new Error(JSON.stringify(computed.faults));
  const value = computed.outputs[output];
  return item === undefined ? value : (value as readonly unknown[])[item];
}

/** The number on the page is what the catalogue computes, to 1e-9 of it; 1e-12 for a depth of 0. */
function expectSame(references: NumberReferences): void {
  const known = Object.entries(references).flatMap(([key, reference]) =>
    reference && reference.entry !== '' ? [[key, reference] as const] : [],
  );
  expect(known.length).toBeGreaterThan(10);
  for (const [key, reference] of known) {
    const value = recomputed(reference);
    expect(typeof value, key).toBe('number');
    if (reference.value === undefined) expect(reference.remark, key).toBeDefined();
    else
      expect(Math.abs((value as number) - reference.value), key).toBeLessThanOrEqual(
        1e-9 * Math.abs(reference.value) + 1e-12,
      );
    for (const input of Object.keys(reference.origins ?? {}))
      expect(
        findEntry(reference.entry)?.inputs.some(({ key: name }) => name === input) ?? false,
        `${key} ${input}`,
      ).toBe(true);
  }
}

const ALDER = await example('alder-200.brief.yaml');
const ON_STOP = {
  parts: { disc: 'D66-155', springs: 'S50' },
  values: { pin1Depth_mm: 3.5, pin2Depth_mm: 2.2, pin3Depth_mm: 1.3, pin4Depth_mm: 0.8, pin5Depth_mm: 0 },
};
const ON_SPRING = { ...ON_STOP, parts: { disc: 'D66-155', springs: 'S30' } };
const DEEP = { ...ON_SPRING, values: { ...ON_STOP.values, pin1Depth_mm: 8, pin2Depth_mm: 6, pin3Depth_mm: 6 } };
const WALKER: CompressionKnowledge = {
  law: 'walker',
  slope_pct: { basis: 'measured', mean: 38, sd: 1, n: 1 },
  intercept_pct: { basis: 'measured', mean: 190, sd: 5, n: 1 },
  referencePressure_MPa: 1,
  trueDensity_g_per_mL: 1.45,
};

// Expected: the page's own numbers. The catalogue's entries are held to outside sources by the golden cases.
describe('numberReferences', () => {
  test.each([
    ['every pin on its stop', ON_STOP],
    ['pins on their springs', ON_SPRING],
    ['pins that cannot enter', DEEP],
    ['another disc, so that the scale is shifted', { ...ON_STOP, parts: { disc: 'D66-160', springs: 'S50' } }],
  ])('property: recomputing gives the number on the page: %s', (_, settings) => {
    expectSame(referencesAt(ALDER, settings));
  });
  test('property: the same for a powder of which only two densities are known', () => {
    expectSame(referencesAt(withoutLaw(ALDER), ON_STOP));
    expectSame(referencesAt(withoutLaw(ALDER), DEEP));
  });
  test('property: the same with powder dragged in by the pins', () => {
    const captured = withPowder(ALDER, {
      captured_ratio: { basis: 'guess', mean: 0, sd: 0.1, halvedBy: 'two-pin-depths' },
    });
    const references = referencesAt(captured, ON_STOP);
    expect(references['mass:1']?.inputs).toHaveProperty('captured_mg');
    expectSame(references);
  });
  test('property: the same where no powder lies behind the last pin', () => {
    const dry = {
      ...ALDER,
      filler: { ...ALDER.filler, disc: { ...ALDER.filler.disc, isRefilledAfterLastPin: false } },
    };
    const deepLast = { ...ON_STOP, values: { ...ON_STOP.values, pin5Depth_mm: 1.5 } };
    expectSame(referencesAt(dry, deepLast));
  });
  test('property: the same by a law that the station entry does not take, while every pin is on its stop', () => {
    const walker = withPowder(ALDER, { compression: WALKER });
    const references = referencesAt(walker, {
      ...ON_STOP,
      values: { ...ON_STOP.values, pin1Depth_mm: 1, pin2Depth_mm: 0.5 },
    });
    expect(references['mass:1']?.entry).toBe('dosing.disc-recurrence');
    expectSame(references);
  });
  test('limit: by such a law a station on its spring has no entry', () => {
    const walker = withPowder(ALDER, { compression: WALKER });
    const references = referencesAt(walker, { ...DEEP, parts: { disc: 'D66-155', springs: 'S30' } });
    expect(references['mass:5']?.entry).toBe('');
    expectSame(references);
  });
  test.each(['hazel-25', 'published-starch', 'rowan-poor-flow'])(
    'property: the same for the candidates of %s',
    async (name) => {
      const input = await example(`${name}.brief.yaml`);
      const { candidates } = search(input);
      for (const candidate of candidates) expectSame(numberReferences(candidate, candidate, input));
    },
  );
  test('property: the probabilities of passing where the spread is known for sure, too', () => {
    const record = { unit_pct: { basis: 'measured', mean: 3, sd: 0, n: 1 } } as const;
    const [part] = ALDER.brief.parts;
    const brief = { ...ALDER.brief, record, parts: [{ ...part, assayError_pct: 0 }] as const };
    const references = referencesAt({ ...ALDER, brief }, ON_STOP);
    expect(references['pass:0']?.value).toBeDefined();
    expect(references['pass:1']?.value).toBeDefined();
    expectSame(references);
  });
  test('limit: without details the numbers that need them are left out', () => {
    const [place] = placesOf(ALDER).places;
    if (!place) throw new Error('no place');
    const references = numberReferences(candidateAt(ALDER, place, ON_STOP), undefined, ALDER);
    expect(references['mass:2']).toBeDefined();
    expect(references['limit-mean-low']).toBeUndefined();
  });
  test('property: every number that is not given has an entry', () => {
    const references = referencesAt(ALDER, ON_SPRING);
    const without = Object.entries(references).filter(([, reference]) => reference?.entry === '');
    expect(without.map(([key]) => key)).toEqual(['target']);
    for (const key of [
      'gain:4',
      'part:disc:D66-160',
      'part:springs:S50',
      'largest:0',
      'first-gross-high',
      'half-width',
    ])
      expect(Object.keys(references)).toContain(key);
  });
  test('property: whatever an input links to can be opened', () => {
    const references = referencesAt(ALDER, ON_SPRING);
    for (const reference of Object.values(references))
      for (const { number } of Object.values(reference?.origins ?? {}))
        if (number) expect(references[number], number).toBeDefined();
  });
});

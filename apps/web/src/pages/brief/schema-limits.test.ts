import { documentSchemas } from '@fillwright/contract/schemas';
import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import { describe, expect, test } from 'vitest';
import { limitsAt } from './schema-limits.ts';

const SCHEMA = documentSchemas()['brief.schema.json'];
const PART = ['parts', 0];

// Limits by docs/schemas/brief.schema.json, which is generated from the contract and compared in CI.
describe('limitsAt', () => {
  test.each([
    [[...PART, 'material', 'bulkDensity_g_per_mL'], { min: 0.03, max: 3 }],
    [[...PART, 'target', 'fill_mg'], { above: 0, max: 3000 }],
    [[...PART, 'target', 'substances', 3, 'water_pct'], { min: 0, max: 50 }],
    [[...PART, 'material', 'compression', 'a_frac'], { min: 0.02, max: 0.98 }],
    [[...PART, 'material', 'compression', 'force_N'], { above: 0, max: 3000 }],
    [['shells', 0, 'mass_mg', 'mean'], { min: 10, max: 500 }],
  ])('golden: %j', (path, range) => {
    expect(limitsAt(SCHEMA, path).range).toEqual(range);
  });
  test('golden: counts, guesses, what has to be given, longest list', () => {
    expect(limitsAt(SCHEMA, ['inProcess', 'sampleCount'])).toMatchObject({ isWhole: true, canBeGuess: true });
    expect(limitsAt(SCHEMA, ['inProcess', 'sampleCount']).isRequired).toBe(false);
    expect(limitsAt(SCHEMA, ['inProcess', 'meanAction_pct'])).toMatchObject({ isRequired: true, canBeGuess: false });
    expect(limitsAt(SCHEMA, ['shells']).mostCount).toBe(20);
  });
  test('refuses: a value that no form of the file has', () => {
    expect(() => limitsAt(SCHEMA, ['parts', 0, 'colour'])).toThrow('parts.0.colour');
  });
});

interface Node {
  readonly properties?: Readonly<Record<string, Node>>;
  readonly items?: Node;
  readonly prefixItems?: readonly Node[];
  readonly anyOf?: readonly Node[];
  readonly oneOf?: readonly Node[];
}

/** Every value of the file, by kind; what a quantity consists of belongs to its field. */
function kindsIn(node: Node, kind: string): readonly string[] {
  const below = Object.entries(node.properties ?? {}).filter(() => node.properties?.['mean'] === undefined);
  return [
    ...below.flatMap(([key, child]) => {
      const inner = kind === '' ? key : `${kind}.${key}`;
      return [inner, ...kindsIn(child, inner)];
    }),
    ...[node.items, ...(node.prefixItems ?? []), ...(node.anyOf ?? []), ...(node.oneOf ?? [])].flatMap((child) =>
      child === undefined ? [] : kindsIn(child, kind),
    ),
  ];
}

describe('words of the form', () => {
  test('golden: every value of the file has a label and one sentence of help, and nothing else has', () => {
    const kinds = new Set(kindsIn(SCHEMA as Node, ''));
    expect(new Set(Object.keys(BRIEF_PAGE_WORDS.fields))).toEqual(kinds);
    for (const { label, help } of Object.values(BRIEF_PAGE_WORDS.fields)) {
      expect(label).toMatch(/^\S.*[^.]$/);
      expect(help).toMatch(/^\S.*\.$/);
    }
  });
});

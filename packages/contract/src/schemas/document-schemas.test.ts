import { describe, expect, test } from 'vitest';
import { documentSchemas } from './document-schemas.ts';

interface JsonSchema {
  readonly type?: string;
  readonly description?: string;
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly additionalProperties?: boolean | JsonSchema;
  readonly items?: JsonSchema | boolean;
  readonly prefixItems?: readonly JsonSchema[];
  readonly anyOf?: readonly JsonSchema[];
  readonly oneOf?: readonly JsonSchema[];
}

const WRITTEN = ['brief.schema.json', 'filler.schema.json', 'shell.schema.json'];
const UNITS: Readonly<Record<string, string>> = { pct: '%', per_MPa: '1/MPa', strokes_per_min: 'strokes/min' };

/** Every key of a document with its schema, by path. */
function fieldsIn(schema: JsonSchema, path = ''): readonly (readonly [string, JsonSchema])[] {
  const parts = [schema.items, ...(schema.prefixItems ?? []), ...(schema.anyOf ?? []), ...(schema.oneOf ?? [])];
  const inside = parts.flatMap((part) => (typeof part === 'object' ? fieldsIn(part, path) : []));
  const own = Object.entries(schema.properties ?? {}).flatMap(([key, value]) => [
    [`${path}/${key}`, value] as const,
    ...fieldsIn(value, `${path}/${key}`),
  ]);
  return [...own, ...inside];
}

function isNumber(schema: JsonSchema): boolean {
  const kinds = [schema, ...(schema.anyOf ?? [])].map(({ type }) => type);
  return kinds.includes('number') || kinds.includes('integer');
}

describe('documentSchemas', () => {
  test.each(WRITTEN)('property: in %s every field is described, and only known keys are allowed', (name) => {
    const schema = documentSchemas()[name] as JsonSchema;
    for (const [path, field] of fieldsIn(schema)) {
      expect(field.description, path).toMatch(/\S/);
      if (field.properties) expect(field.additionalProperties, path).toBe(false);
    }
    expect(schema.additionalProperties).toBe(false);
  });
  test.each(WRITTEN)('property: in %s every number says unit and range, the unit being that of its key', (name) => {
    const fields = fieldsIn(documentSchemas()[name] as JsonSchema).filter(([, field]) => isNumber(field));
    expect(fields.length).toBeGreaterThan(10);
    for (const [path, { description }] of fields) {
      const key = path.split('/').at(-1) ?? '';
      if (key === 'format' || key === 'deeperIs') continue;
      expect(description, path).toMatch(/(above|at least) .*(below|at most) /);
      const suffix = /^[a-zA-Z]+\d*_(?<unit>\w+)$/.exec(key)?.groups?.['unit'];
      if (suffix === undefined || /^(frac|ratio)$/.test(suffix)) continue;
      expect(description, path).toContain(` ${UNITS[suffix] ?? suffix.replaceAll('_per_', '/')}`);
    }
  });
});

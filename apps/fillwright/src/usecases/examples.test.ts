import { documentSchemas } from '@fillwright/contract/schemas';
import { search, type Design } from '@fillwright/engine/design';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { readdirSync, readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { readBrief } from '@fillwright/contract/files';
import { readFiller } from '@fillwright/contract/files';

const FOLDER = new URL('../../../../examples/', import.meta.url);
const FILES = readdirSync(FOLDER);
const BRIEFS = FILES.filter((name) => name.endsWith('.brief.yaml'));
const FILLERS = FILES.filter((name) => name.endsWith('.filler.yaml'));
const pathOf = (name: string): string => new URL(name, FOLDER).pathname;
const readText = (path: string): Promise<string> => readFile(path, 'utf8');

async function designOf(name: string): Promise<Design> {
  const read = await readBrief({ path: pathOf(name), readText });
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return search({ ...read, seed: 1 });
}

describe('examples', () => {
  test.each(BRIEFS)('golden: %s reads without a fault and warns the people who use it', async (name) => {
    const read = await readBrief({ path: pathOf(name), readText });
    expect(read).toMatchObject({ ok: true });
    expect(read.ok && read.brief.cautions?.length).toBeGreaterThanOrEqual(2);
  });
  test.each(FILLERS)('golden: %s reads without a fault', async (name) => {
    expect(await readFiller({ path: pathOf(name), readText })).toMatchObject({ ok: true });
  });
  test.each([...BRIEFS, ...FILLERS])('golden: %s fits the published schema', (name) => {
    const kind = name.endsWith('.brief.yaml') ? 'brief' : 'filler';
    const ajv = new Ajv2020({ allErrors: true, validateFormats: false });
    const validate = ajv.compile(documentSchemas()[`${kind}.schema.json`] as object);
    validate(parse(readFileSync(pathOf(name), 'utf8')));
    expect(validate.errors).toBeNull();
  });

  test('golden: alder-200 has the figures of the worked example', async () => {
    const design = await designOf('alder-200.brief.yaml');
    // 200 x 1.12 / (0.992 x 0.985) = 229.245 mg, and 430 - 229.245 = 200.755 mg of diluent, by hand
    expect(design.target.substances[0]?.mass_mg).toBeCloseTo(229.245, 3);
    expect(design.target.diluent_mg).toBeCloseTo(200.755, 3);
    expect(design.candidates.length).toBeGreaterThan(0);
  });
  test('golden: hazel-25 follows the assay: 25 mg / 15.6 % = 160.256 mg, by hand', async () => {
    const design = await designOf('hazel-25.brief.yaml');
    expect(design.target.fill_mg).toBeCloseTo(160.256, 3);
    expect(design.filler.id).toBe('two-shift');
    expect(design.candidates.length).toBeGreaterThan(0);
  });
  test('golden: the densities of published-starch are those of the paper, table 3', async () => {
    const read = await readBrief({ path: pathOf('published-starch.brief.yaml'), readText });
    expect(read).toMatchObject({
      brief: {
        parts: [
          {
            material: {
              bulkDensity_g_per_mL: { mean: 0.621, sd: 0.01 },
              tappedDensity_g_per_mL: { mean: 0.726, sd: 0.013 },
            },
          },
        ],
      },
    });
    expect((await designOf('published-starch.brief.yaml')).candidates.length).toBeGreaterThan(0);
  });
  test('golden: rowan-poor-flow can be filled, with reserve', async () => {
    const { candidates } = await designOf('rowan-poor-flow.brief.yaml');
    expect(candidates.length).toBeGreaterThan(0);
    expect(candidates.every(({ suitability }) => suitability.grade === 'possible')).toBe(true);
  });
  test('limit: juniper-too-much is in order and cannot be filled, each disc for a reason', async () => {
    const { candidates, rejections } = await designOf('juniper-too-much.brief.yaml');
    expect(candidates).toEqual([]);
    expect(new Set(rejections.map(({ size }) => size))).toEqual(new Set(['0', '1', '2']));
  });
});

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { DRAFT, NOON, PROBLEM, startServing, type Answer, type Serving } from '../../fixtures/serving.ts';

const ALDER = readFileSync(new URL('../../../../examples/alder-200.brief.yaml', import.meta.url), 'utf8');
let serving: Serving;
let count = 0;
let id = '';

beforeAll(async () => {
  serving = await startServing();
});
beforeEach(() => {
  id = `oak-${String(++count)}`;
});
afterAll(() => serving.stop());

const get = (path: string): Promise<Answer> => serving.get(path);
const post = (payload: unknown, headers?: object): Promise<Answer> => serving.post(id, payload, headers);

function hashOf(text: string, previous: string | null): string {
  const fields = ['here', 'brief', id, previous === null ? 1 : 2, 'draft', previous, 'Kim', NOON, null, text];
  return createHash('sha256').update(JSON.stringify(fields)).digest('hex');
}

describe('GET', () => {
  test('golden: health says which program and version answers', async () => {
    expect(await get('health')).toMatchObject({ status: 200, body: { program: 'fillwright', version: '1.2.3' } });
  });
  test('golden: versions are listed, read one by one, and end in the newest', async () => {
    const first = { kind: 'brief', id, version: 1, status: 'draft', by: 'Kim', at: NOON, reason: null, previous: null };
    const { text, basedOn, ...sent } = DRAFT;
    // the chain as it is written down: sha256 over [site, kind, id, version, status, previous, by, at, reason, text]
    const sha256 = hashOf(text, null);
    expect(await post(DRAFT)).toMatchObject({ status: 201, body: { ...first, sha256, text } });
    const second = { ...first, version: 2, previous: sha256, sha256: hashOf('format: 2\n', sha256) };
    await post({ ...sent, basedOn: 1, text: 'format: 2\n' });
    expect((await get(`documents/brief/${id}`)).body).toEqual({ ...second, text: 'format: 2\n' });
    expect((await get(`documents/brief/${id}/versions/1`)).body).toEqual({ ...first, sha256, text });
    const history = (await get(`documents/brief/${id}/versions`)).body as readonly object[];
    expect(history).toHaveLength(2);
    for (const head of [second, { ...first, sha256 }]) expect(history).toContainEqual(head);
    expect((await get('documents/brief')).body).toContainEqual(second);
    expect((await get('documents/design')).body).toEqual([]);
    expect(basedOn).toBe(0);
  });
  test('golden: examples by name, as they stand in the folder', async () => {
    const { body } = await get('examples');
    expect(body).toContainEqual({ kind: 'brief', name: 'alder-200.brief.yaml', title: 'Alder 200' });
    expect(body).toContainEqual({ kind: 'filler', name: 'two-shift.filler.yaml', title: 'Two-shift disc filler' });
    const { text, type } = await get('examples/alder-200.brief.yaml');
    expect([text, type]).toEqual([ALDER, 'text/plain; charset=utf-8']);
    expect((await get('examples/two-shift.filler.yaml')).text).toContain('carriers:');
  });
  test('golden: openapi.json is the document that is published, but for the version', async () => {
    const published = JSON.parse(
      readFileSync(new URL('../../../../docs/openapi.json', import.meta.url), 'utf8'),
    ) as object;
    expect((await get('openapi.json')).body).toMatchObject({
      ...published,
      info: { title: 'Fillwright', version: '1.2.3' },
    });
  });
  test.each([
    ['documents/brief/none', 404, 'unknown-document'],
    ['documents/brief/none/versions', 404, 'unknown-document'],
    ['documents/brief/none/versions/1', 404, 'unknown-document'],
    ['examples/none.brief.yaml', 404, 'unknown-example'],
    ['nothing', 404, 'unknown-address'],
    ['documents', 404, 'unknown-address'],
    ['%zz', 400, 'unreadable-request'],
    [`documents/brief/${'a'.repeat(200)}`, 400, 'unreadable-request'],
  ])('refuses: %s is %i %s', async (path, status, code) => {
    expect(await get(path)).toMatchObject({ status, type: PROBLEM, body: { type: `/problems/${code}`, status } });
  });
  test.each([
    ['documents/breif', 'kind', 'nearest is brief'],
    ['documents/brief/FW_D01', 'id', '"FW_D01"'],
    ['documents/brief/a--b', 'id', 'allowed'],
    ['documents/brief/a/versions/0', 'version', 'whole number from 1'],
    ['documents/brief/a/versions/1.0', 'version', 'whole number from 1'],
    ['documents/brief/a/versions/1e999', 'version', 'whole number from 1'],
    ['documents/brief/a/versions/', 'version', 'whole number from 1'],
    ['examples/..%2f..%2fpackage.json', 'name', 'name of an example'],
  ])('refuses: %s names the field %s', async (path, field, words) => {
    const { status, type, body } = await get(path);
    const detail = expect.stringContaining(words) as string;
    expect([status, type, body]).toMatchObject([400, PROBLEM, { errors: [{ pointer: `#/${field}`, detail }] }]);
  });
});

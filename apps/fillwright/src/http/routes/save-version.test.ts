import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { ask, DRAFT, PROBLEM, startServing, type Answer, type Serving } from '../../../fixtures/serving.ts';

const ALDER = readFileSync(new URL('../../../../../examples/alder-200.brief.yaml', import.meta.url), 'utf8');
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

describe('POST a version', () => {
  test('golden: a draft may be anything that was typed', async () => {
    expect(await post({ ...DRAFT, text: '}{ 100 % ü 😀\t\r\n' })).toMatchObject({
      status: 201,
      body: { text: '}{ 100 % ü 😀\t\r\n' },
    });
  });
  test('golden: saved, superseded with a reason', async () => {
    const saved = { ...DRAFT, status: 'saved', text: ALDER };
    expect(await post(saved)).toMatchObject({ status: 201, body: { version: 1, status: 'saved' } });
    const next = { ...saved, basedOn: 1, text: `${ALDER}# once more\n` };
    expect(await post(next)).toMatchObject({
      ...{ status: 422, type: PROBLEM },
      body: { type: '/problems/reason-missing', errors: [{ pointer: '#/reason' }] },
    });
    expect(await post({ ...next, reason: ' more often ' })).toMatchObject({
      status: 201,
      body: { reason: 'more often' },
    });
  });
  test('golden: two people change one brief: the second sees both texts, nothing is overwritten', async () => {
    await post(DRAFT);
    await post({ ...DRAFT, basedOn: 1, text: 'a: 1\n', by: 'Ash' });
    const { status, type, body } = await post({ ...DRAFT, basedOn: 1, text: 'a: 2\n' });
    expect([status, type]).toEqual([409, PROBLEM]);
    expect(body).toMatchObject({
      type: '/problems/newer-version',
      current: { version: 2, text: 'a: 1\n', by: 'Ash' },
      yours: 'a: 2\n',
    });
    expect((await get(`documents/brief/${id}`)).body).toMatchObject({ version: 2, text: 'a: 1\n' });
  });
  test('refuses: a version based on one that is not there', async () => {
    expect(await post({ ...DRAFT, basedOn: 7 })).toMatchObject({
      status: 422,
      body: { type: '/problems/not-in-order' },
    });
  });
  test.each([
    ['an unknown field', { bye: 'Kim' }, ['bye', 'nearest known name is by']],
    ['a missing field', { by: undefined }, ['by', 'missing']],
    ['a wrong type', { basedOn: '1' }, ['basedOn', 'without quotation marks']],
    ['a number below its range', { basedOn: -1 }, ['basedOn', 'at least 0']],
    ['half a number', { basedOn: 0.5 }, ['basedOn', 'whole number']],
    ['a word that is no choice', { status: 'savd' }, ['status', 'nearest is saved']],
    ['a name of blanks', { by: '  ' }, ['by', '1 to 80']],
    ['a name on two lines', { by: 'Kim\nAsh' }, ['by', 'one line']],
    ['no text', { text: '' }, ['text', '1 to 262144']],
    ['a text with the character 0', { text: 'a\0' }, ['text', 'character 0']],
    ['half of a character', { text: 'a\ud800' }, ['text', 'whole characters']],
    ['a text that is too long', { text: 'x'.repeat(270_000) }, ['text', '1 to 262144']],
    ['a reason that says nothing', { reason: '..' }, ['reason', '3 to 500']],
  ])('refuses: %s, by its field', async (_what, change, [field, words]) => {
    const { status, type, body } = await post({ ...DRAFT, ...change });
    const detail = expect.stringContaining(words!) as string;
    expect([status, type, body]).toMatchObject([400, PROBLEM, { errors: [{ pointer: `#/${field}`, detail }] }]);
  });
  test('refuses: a number that JavaScript reads as infinite', async () => {
    expect(await post('{"basedOn":1e999,"status":"draft","text":"a","by":"Kim"}')).toMatchObject({
      ...{ status: 400, type: PROBLEM },
      body: { errors: [{ pointer: '#/basedOn', detail: expect.stringContaining('not a finite number') as string }] },
    });
  });
  test('refuses: everything at once', async () => {
    const { body } = await post({ ...DRAFT, by: '', status: 1, more: 1 });
    expect((body as { errors: { pointer: string }[] }).errors.map(({ pointer }) => pointer).sort()).toEqual([
      ...['#/by', '#/more', '#/status'],
    ]);
  });
  test.each(['[]', 'null', '"a"', '1', '{}'])('refuses: the body %s', async (payload) => {
    expect(await post(payload)).toMatchObject({ status: 400, body: { type: '/problems/invalid-input' } });
  });
  test.each(['', '{"basedOn":', '{"a":NaN}', '{"__proto__":{"a":1}}', '\ufeff'])(
    'refuses: the body %s, which is not JSON that is whole',
    async (payload) => {
      expect(await post(payload)).toMatchObject({
        status: 400,
        type: PROBLEM,
        body: { type: '/problems/unreadable-request' },
      });
    },
  );
  test('refuses: a body above 300 kB before it is read', async () => {
    expect(await post({ ...DRAFT, text: 'x'.repeat(310_000) })).toMatchObject({
      ...{ status: 413, type: PROBLEM, body: { type: '/problems/body-too-large' } },
    });
  });
  test.each(['text/plain', 'application/xml', 'multipart/form-data; boundary=a', 'application/x-www-form-urlencoded'])(
    'refuses: a body of type %s',
    async (type) => {
      expect(await post('a', { 'content-type': type })).toMatchObject({
        ...{ status: 415, type: PROBLEM, body: { type: '/problems/media-type' } },
      });
    },
  );
  test('refuses: a wrong unit and a decimal comma in what is to be saved, each by its field', async () => {
    const text = ALDER.replace(/tappedDensity_g_per_mL: /, 'tappedDensity_kg_per_m3: ').replace(
      /claim_mg: \d+/,
      'claim_mg: 12,5',
    );
    const { status, body } = await post({ ...DRAFT, status: 'saved', text });
    expect(status).toBe(422);
    expect(body).toMatchObject({ type: '/problems/not-in-order' });
    const { errors } = body as { errors: { pointer: string; detail: string }[] };
    expect(new Set(errors.map(({ pointer }) => pointer))).toEqual(new Set(['#/text']));
    const told = errors.map(({ detail }) => detail).join('\n');
    expect(told).toMatch(/tappedDensity_kg_per_m3.*tappedDensity_g_per_mL/);
    expect(told).toMatch(/claim_mg.*"12,5".*12\.5/);
  });
  test('refuses: a text of nothing but unknown fields, within seconds', { timeout: 20_000 }, async () => {
    const text = Array.from({ length: 24_000 }, (_, i) => `k${i}: 1\n`).join('');
    expect(await post({ ...DRAFT, status: 'saved', text })).toMatchObject({ status: 422 });
  });
  test('refuses: a design that is not in order', async () => {
    for (const text of ['{', '{"format":1}', '{"format":1,"seed":1e999}'])
      expect(
        await ask(serving.app, {
          ...{ method: 'POST', url: `/api/documents/design/${id}/versions` },
          payload: { ...DRAFT, status: 'saved', text },
        }),
      ).toMatchObject({
        ...{ status: 422, body: { type: '/problems/not-in-order' } },
      });
  });
  test('golden: a filler and a shell have their own lists, versions and sentences', async () => {
    const filler = readFileSync(new URL('../../../../../examples/two-shift.filler.yaml', import.meta.url), 'utf8');
    const send = (kind: string, text: string): Promise<Answer> =>
      ask(serving.app, {
        ...{ method: 'POST', url: `/api/documents/${kind}/${id}/versions` },
        payload: { ...DRAFT, status: 'saved', text },
      });
    expect(await send('filler', filler)).toMatchObject({ status: 201, body: { kind: 'filler', version: 1 } });
    expect(await send('shell', filler)).toMatchObject({ status: 422, body: { type: '/problems/not-in-order' } });
    expect(await send('fillers', filler)).toMatchObject({ status: 400 });
    expect((await get(`documents/filler/${id}`)).body).toMatchObject({ text: filler });
    expect((await get('documents/filler')).body).toMatchObject([{ id }]);
    expect((await get('documents/shell')).body).toEqual([]);
  });
  test('refuses: to delete or to change what was kept', async () => {
    await post(DRAFT);
    const refused = { status: 404, type: PROBLEM, body: { type: '/problems/unknown-address' } };
    expect(await ask(serving.app, { method: 'DELETE', url: `/api/documents/brief/${id}` })).toMatchObject(refused);
    expect(
      await ask(serving.app, { method: 'POST', url: `/api/documents/brief/${id}/versions/1`, payload: DRAFT }),
    ).toMatchObject(refused);
  });
});

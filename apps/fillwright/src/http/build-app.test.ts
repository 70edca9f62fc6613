import { connect, type AddressInfo } from 'node:net';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { ask, DRAFT, PROBLEM, startServing, type Answer, type Serving } from '../../fixtures/serving.ts';
import { openDocuments, type Store } from '../usecases/open-documents.ts';

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

describe('every answer', () => {
  // OWASP Secure Headers Project: names and values, from memory; CSP level 3 for the policy
  test('golden: carries the security headers, also when it is a problem', async () => {
    for (const url of ['/api/health', '/api/nothing', '/api/%zz', '/none.js', '/']) {
      const { headers } = await serving.app.inject({ url });
      expect(headers).toMatchObject({
        ...{ 'x-content-type-options': 'nosniff', 'referrer-policy': 'no-referrer', 'x-frame-options': 'DENY' },
        'content-security-policy': expect.stringMatching(/default-src '(self|none)'.*frame-ancestors 'none'/) as string,
      });
      expect(String(headers['content-security-policy'])).not.toMatch(/unsafe|\*|http:/);
      expect(headers['strict-transport-security']).toBeUndefined();
      expect(headers['access-control-allow-origin']).toBeUndefined();
      expect(headers['server'] ?? headers['x-powered-by']).toBeUndefined();
    }
  });
  test('golden: fits the schema that OpenAPI gives for it (judged by Ajv)', async () => {
    await post(DRAFT);
    const document = (await get('openapi.json')).body as { paths: Record<string, unknown>; components: object };
    expect(Object.keys(document.paths)).toHaveLength(7);
    const ajv = new Ajv2020({ strict: false, validateFormats: false });
    ajv.addSchema({ $id: 'openapi', ...document });
    const fits = (name: string, value: unknown): unknown => {
      const validate = ajv.compile({ $ref: `openapi#/components/schemas/${name}` });
      return validate(value) ? 'fits' : validate.errors;
    };
    const { current, ...rest } = (await post({ ...DRAFT, text: 'b' })).body as Record<string, unknown>;
    expect(fits('Problem', { ...rest, current })).toBe('fits');
    expect(fits('Version', current)).toBe('fits');
    expect(fits('NewVersionInput', DRAFT)).toBe('fits');
    expect(fits('NewVersionInput', { ...DRAFT, more: 1 })).not.toBe('fits');
    for (const head of (await get('documents/brief')).body as readonly unknown[])
      expect(fits('VersionHead', head)).toBe('fits');
    for (const path of ['none', 'documents/x', 'documents/brief/none'])
      expect(fits('Problem', (await get(path)).body)).toBe('fits');
  });
  test('golden: leaves one line in the log without body, name or query', async () => {
    serving.lines.length = 0;
    await post({ ...DRAFT, by: 'Somebody', text: 'confidential' });
    await get('documents/brief?token=confidential');
    expect(serving.lines).toEqual([
      expect.stringMatching(new RegExp(`^POST /api/documents/brief/${id}/versions 201 [\\d.]+ ms$`)),
      expect.stringMatching(/^GET \/api\/documents\/brief 200 [\d.]+ ms$/),
    ]);
  });
  // RFC 8259, section 8.1: JSON is UTF-8
  test('refuses: a body that is no UTF-8, which would be kept changed', async () => {
    const [head = '', tail = ''] = JSON.stringify({ ...DRAFT, text: 'SPLIT' }).split('SPLIT');
    const body = Buffer.concat([Buffer.from(head), Buffer.from([0xff, 0xfe]), Buffer.from(tail)]);
    expect(await post(body)).toMatchObject({
      status: 400,
      type: PROBLEM,
      body: { type: '/problems/unreadable-request' },
    });
    expect(await get(`documents/brief/${id}`)).toMatchObject({ status: 404 });
    expect(await post({ ...DRAFT, text: 'ü 😀 \u2028' })).toMatchObject({ status: 201, body: { text: 'ü 😀 \u2028' } });
  });
  test('refuses: another host, and changes from another origin', async () => {
    const rebound = { headers: { host: 'rebound.example' } };
    expect(await ask(serving.app, { url: '/api/documents/brief', ...rebound })).toMatchObject({
      status: 421,
      type: PROBLEM,
    });
    expect(await post(DRAFT, { origin: 'http://other.example' })).toMatchObject({ status: 403, type: PROBLEM });
    expect(await get(`documents/brief/${id}`)).toMatchObject({ status: 404 });
    expect(await post(DRAFT, { origin: 'http://localhost:80' })).toMatchObject({ status: 201 });
  });
  test('refuses: more requests than one person makes, also for what is not there', async () => {
    const small = await serving.built({ mostRequests_per_min: 3 });
    const statuses: number[] = [];
    for (const path of ['health', 'none', 'health', 'health', 'none'])
      statuses.push((await ask(small, { url: `/api/${path}` })).status);
    expect(statuses).toEqual([200, 404, 200, 429, 429]);
    expect((await small.inject({ url: '/api/health' })).headers).toMatchObject({
      'content-type': PROBLEM,
      'retry-after': '60',
    });
    await small.close();
  });
  test('refuses: what is no HTTP, or has a head that is too long', async () => {
    await serving.app.listen({ port: 0, host: '127.0.0.1' });
    const { port } = serving.app.server.address() as AddressInfo;
    const spoken = (text: string): Promise<string> =>
      new Promise((resolve) => {
        let answer = '';
        const socket = connect(port, '127.0.0.1', () => socket.write(text));
        socket
          .on('data', (part) => (answer += String(part)))
          .on('close', () => {
            resolve(answer);
          });
      });
    // RFC 6585, section 5: 431 Request Header Fields Too Large
    const long = await spoken(`GET / HTTP/1.1\r\nHost: localhost\r\nA: ${'y'.repeat(20_000)}\r\n\r\n`);
    expect(long).toMatch(/^HTTP\/1\.1 431 [^]*problem\+json[^]*"status":431/);
    expect(await spoken('SAY HELLO\r\n\r\n')).toMatch(/^HTTP\/1\.1 400 [^]*problem\+json[^]*unreadable-request/);
    // RFC 9110: section 10.1.1, 417 for an expectation that cannot be met; section 9.3.6, CONNECT; RFC 9112, section 3.2: Host
    const odd: readonly (readonly [string, number])[] = [
      ['GET /api/health HTTP/1.1\r\nHost: localhost\r\nExpect: more\r\n\r\n', 417],
      ['CONNECT localhost:1 HTTP/1.1\r\nHost: localhost\r\n\r\n', 400],
      ['SAY HELLO\r\n\r\n', 400],
      ['GET /api/health HTTP/1.1\r\nConnection: close\r\n\r\n', 421],
      ['GET /api/health HTTP/1.1\r\nHost: localhost\r\nHost: localhost\r\nConnection: close\r\n\r\n', 421],
      ['GET /api/health HTTP/1.1\r\nHost: a@localhost\r\nConnection: close\r\n\r\n', 421],
    ];
    for (const [text, status] of odd) {
      const answer = await spoken(text);
      expect(answer).toMatch(new RegExp(`^HTTP/1\\.1 ${status} [^]*problem\\+json[^]*"status":${status}`));
      expect(answer).toMatch(/content-security-policy: default-src 'none'/i);
      expect(answer).toMatch(/x-content-type-options: nosniff/i);
    }
  });
});

describe('trouble inside', () => {
  test('refuses: without the text of the error, with an id that the log has too', async () => {
    const broken = await serving.built({ store: {} as Store });
    const { status, type, text, body } = await ask(broken, { url: '/api/documents/brief' });
    expect([status, type]).toEqual([500, PROBLEM]);
    expect(text).not.toMatch(/TypeError|undefined|query/);
    expect(serving.unforeseen.at(-1)).toEqual([(body as { instance: string }).instance, expect.any(TypeError)]);
    await broken.close();
  });
  test('refuses: what the store cannot do, in a sentence; the log has it under the same id', async () => {
    const store = await openDocuments({ FILLWRIGHT_DATA: join(serving.folder, 'other') }, true);
    await store.close();
    const closed = await serving.built({ store });
    const { status, type, body } = await ask(closed, { url: '/api/documents/brief' });
    expect([status, type, body]).toMatchObject([503, PROBLEM, { type: '/problems/store-trouble' }]);
    expect(serving.unforeseen.at(-1)?.[0]).toBe((body as { instance: string }).instance);
    await closed.close();
  });
});

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync, brotliCompressSync } from 'node:zlib';
import Fastify from 'fastify';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { addWebApp } from './add-web-app.ts';
import type { App } from './app.ts';
import { problemOf } from './problem-of.ts';
import { sendProblem } from './send-problem.ts';

const folder = mkdtempSync(join(tmpdir(), 'web-'));
const PAGE = '<!doctype html><title>Fillwright</title>';
let [app, bare]: [App?, App?] = [];

beforeAll(async () => {
  mkdirSync(join(folder, 'built/assets'), { recursive: true });
  writeFileSync(join(folder, 'built/index.html'), PAGE);
  writeFileSync(join(folder, 'built/assets/main-1a2b.js'), 'export {};');
  writeFileSync(join(folder, 'built/assets/main-1a2b.js.br'), brotliCompressSync('export {};'));
  writeFileSync(join(folder, 'built/.hidden'), 'secret');
  writeFileSync(join(folder, 'secret.txt'), 'secret');
  app = await served(join(folder, 'built'));
  bare = await served(join(folder, 'nothing'));
});
afterAll(async () => {
  await app?.close();
  await bare?.close();
  rmSync(folder, { recursive: true });
});

async function served(root: string): Promise<App> {
  const made = Fastify() as unknown as App;
  made.setErrorHandler((error, _request, reply) => sendProblem(reply, problemOf(error)));
  await addWebApp(made, root);
  return made;
}

async function get(url: string, method: 'GET' | 'HEAD' | 'POST' = 'GET', from = app) {
  const { statusCode, headers, body } = await from!.inject({ method, url });
  return { status: statusCode, type: headers['content-type'], cache: headers['cache-control'], body };
}

describe('addWebApp', () => {
  test.each(['/', '/index.html', '/products/fw-d01/fill', '/products/fw-d01/fill?station=2'])(
    'golden: %s is the page, asked for anew each time',
    async (url) => {
      expect(await get(url)).toEqual({ status: 200, type: 'text/html; charset=utf-8', cache: 'no-cache', body: PAGE });
    },
  );
  // RFC 8246: immutable; RFC 9239: both names of the type are of JavaScript
  test('golden: what is named by its content is kept for a year', async () => {
    const { type, ...answer } = await get('/assets/main-1a2b.js');
    expect(type).toMatch(/^(text|application)\/javascript; charset=utf-8$/);
    expect(answer).toEqual({ status: 200, cache: 'public, max-age=31536000, immutable', body: 'export {};' });
  });
  // RFC 9110: content coding, RFC 7932: br
  test('golden: a packed twin goes to a browser that takes it, and only to it', async () => {
    const url = '/assets/main-1a2b.js';
    const { headers, rawPayload } = await app!.inject({ url, headers: { 'accept-encoding': 'gzip, br' } });
    expect(headers).toMatchObject({
      ...{ 'content-encoding': 'br', vary: 'accept-encoding' },
      'cache-control': 'public, max-age=31536000, immutable',
    });
    expect(headers['content-type']).toMatch(/javascript/);
    expect(brotliDecompressSync(rawPayload).toString()).toBe('export {};');
    const plain = await app!.inject({ url, headers: { 'accept-encoding': 'identity' } });
    expect([plain.headers['content-encoding'], plain.body]).toEqual([undefined, 'export {};']);
  });
  test('golden: HEAD answers without a body', async () => {
    expect(await get('/products/x', 'HEAD')).toMatchObject({ status: 200, body: '' });
  });
  test.each([
    ['/assets/none.js', 'GET'],
    ['/robots.txt', 'GET'],
    ['/api', 'GET'],
    ['/api/none', 'GET'],
    ['/api/none', 'HEAD'],
    ['/API/health', 'GET'],
    ['//api/health', 'GET'],
    ['/products/x', 'POST'],
    ['/.hidden', 'GET'],
    ['/../secret.txt', 'GET'],
    ['/..%2fsecret.txt', 'GET'],
    ['/%2e%2e/secret.txt', 'GET'],
    ['/assets/..%5c..%5c..%5csecret.txt', 'GET'],
  ] as const)('refuses: %s by %s', async (url, method) => {
    const { status, type, body } = await get(url, method);
    expect(type).toBe('application/problem+json; charset=utf-8');
    expect([400, 403, 404]).toContain(status);
    expect(body).not.toContain('secret');
  });
  test('refuses: a page that was not built, with what to do', async () => {
    expect(await get('/', 'GET', bare)).toMatchObject({
      status: 503,
      body: expect.stringContaining('npm run setup') as string,
    });
    expect(await get('/a.js', 'GET', bare)).toMatchObject({ status: 404 });
  });
});

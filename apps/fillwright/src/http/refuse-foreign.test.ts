import type { FastifyRequest } from 'fastify';
import { describe, expect, test } from 'vitest';
import { refuseForeign } from './refuse-foreign.ts';

const check = refuseForeign(['Press.example']);

async function outcome(method: string, headers: Record<string, string>): Promise<string> {
  try {
    await check({ method, headers, raw: { rawHeaders: Object.entries(headers).flat() } } as unknown as FastifyRequest);
    return 'taken';
  } catch (error) {
    return error instanceof Error ? error.message : '';
  }
}

// Fetch standard (WHATWG), "Origin" header: scheme, host and port, or `null`; RFC 9110, section 7.2: host and port
describe('refuseForeign', () => {
  test.each([
    ['localhost:4680', 'http://localhost:4680'],
    ['localhost', 'http://localhost:80'],
    ['127.0.0.1:4680', 'http://127.0.0.1:4680'],
    ['[::1]:4680', 'http://[::1]:4680'],
    ['10.1.2.3:80', 'http://10.1.2.3'],
    ['press.example', 'https://press.example'],
    ['PRESS.example:8443', 'https://press.example:8443'],
  ])('golden: %s takes what its own page %s sends, and what no page sends', async (host, origin) => {
    expect(await outcome('POST', { host, origin })).toBe('taken');
    expect(await outcome('POST', { host })).toBe('taken');
    expect(await outcome('GET', { host })).toBe('taken');
  });
  test.each([
    'http://other.example',
    'http://localhost:4681',
    'null',
    '',
    'file://',
    'http://localhost.other.example:4680',
  ])('refuses: a change from %s', async (origin) => {
    const host = 'localhost:4680';
    for (const method of ['POST', 'PUT', 'DELETE', 'PATCH', 'OPTIONS'])
      expect(await outcome(method, { host, origin })).toBe('foreign-origin');
    expect(await outcome('GET', { host, origin })).toBe('taken');
  });
  test.each(['rebound.example:4680', 'localhost.', 'press.example.other', '', 'a b', 'localhost:99999'])(
    'refuses: a request for the name "%s", whatever it wants',
    async (host) => {
      for (const method of ['GET', 'HEAD', 'POST'])
        expect(await outcome(method, { host, origin: `http://${host}` })).toBe('foreign-host');
    },
  );
  test('refuses: a request for no name', async () => {
    expect(await outcome('GET', {})).toBe('foreign-host');
  });
});

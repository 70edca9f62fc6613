import { fileURLToPath } from 'node:url';
import { createServer } from 'vite';
import { afterAll, beforeAll, expect, describe, test } from 'vitest';
import { startProgram, type Program } from './fixtures/program.ts';

let program: Program;

beforeAll(async () => {
  program = await startProgram();
});
afterAll(() => program.stop());

describe('vite.config', () => {
  test('regression: a page of the development server can save', async () => {
    const vite = await createServer({
      configFile: fileURLToPath(new URL('vite.config.ts', import.meta.url)),
      logLevel: 'error',
      server: { host: '127.0.0.1', port: 0, hmr: false, proxy: { '/api': { target: program.url } } },
      optimizeDeps: { noDiscovery: true },
    });
    try {
      await vite.listen();
      const origin = new URL(vite.resolvedUrls?.local[0] ?? '').origin;
      const answer = await fetch(`${origin}/api/documents/brief/dev/versions`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', origin },
        body: JSON.stringify({ basedOn: 0, status: 'draft', text: 'format: 1', by: 'Kim' }),
      });
      expect(answer.status).toBe(201);
    } finally {
      await vite.close();
    }
  });
});

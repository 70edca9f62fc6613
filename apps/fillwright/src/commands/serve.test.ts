import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';

const PROGRAM = fileURLToPath(new URL('../../bin/fillwright.mjs', import.meta.url));
const READY = /^Fillwright is ready: (http:\S+) /m;
const folder = mkdtempSync(join(tmpdir(), 'serve-'));
const running = new Set<ChildProcess>();

afterAll(() => {
  for (const server of running) server.kill('SIGKILL');
  rmSync(folder, { recursive: true });
});

interface Started {
  readonly server: ChildProcess;
  /** Where it answers; undefined when it ended before. */
  readonly url: string | undefined;
  readonly out: () => string;
  readonly problem: () => string;
  readonly ended: Promise<{ code: number | null }>;
}

/** Starts the built program as a person does, and waits until it is ready or ended. */
async function serve(args: readonly string[], environment: Readonly<Record<string, string>> = {}): Promise<Started> {
  const env = {
    ...process.env,
    DATABASE_URL: '',
    PORT: '0',
    HOST: '',
    FILLWRIGHT_DATA: join(folder, 'data'),
    ...environment,
  };
  const server = spawn(process.execPath, [PROGRAM, 'serve', ...args], { env, cwd: folder });
  running.add(server);
  let [out, problem] = ['', ''];
  server.stderr.on('data', (text) => (problem += String(text)));
  const ended = once(server, 'close').then(([code]) => {
    running.delete(server);
    return { code: code as number | null };
  });
  const ready = new Promise<string | undefined>((resolve) => {
    server.stdout.on('data', (text) => {
      out += String(text);
      const url = READY.exec(out)?.[1];
      if (url !== undefined) resolve(url);
    });
    void ended.then(() => {
      resolve(undefined);
    });
  });
  return { server, url: await ready, out: () => out, problem: () => problem, ended };
}

async function documents(url: string | undefined): Promise<readonly { id: string; version: number }[]> {
  return (await (await fetch(`${url ?? ''}api/documents/brief`)).json()) as { id: string; version: number }[];
}

/** A program that holds a port. */
async function portInUse(): Promise<{ readonly port: string; readonly free: () => void }> {
  const other = createServer().listen(0, '127.0.0.1');
  await once(other, 'listening');
  return { port: String((other.address() as AddressInfo).port), free: () => other.close() };
}

describe('fillwright serve', () => {
  test('golden: an empty store answers until SIGINT and ends with 0', async () => {
    const { server, url, ended, problem } = await serve([]);
    expect(url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    expect(await documents(url)).toEqual([]);
    server.kill('SIGINT');
    expect(await ended).toEqual({ code: 0 });
    expect(problem()).toBe('');
  });
  test('golden: the demo product is added once; SIGTERM ends with 0, and everything is kept', async () => {
    const first = await serve(['--demo']);
    const before = await documents(first.url);
    expect(before).toMatchObject([{ id: 'fw-d01', version: 1, status: 'saved' }]);
    expect(first.out()).toContain('was added');
    first.server.kill('SIGTERM');
    expect(await first.ended).toEqual({ code: 0 });

    const begun = performance.now();
    const second = await serve(['--demo', '--log']);
    console.log(`start after a clean stop: ${((performance.now() - begun) / 1000).toFixed(2)} s`);
    expect(await documents(second.url)).toEqual(before);
    second.server.kill('SIGTERM');
    expect(await second.ended).toEqual({ code: 0 });
    expect(second.out()).toMatch(/^GET \/api\/documents\/brief 200 [\d.]+ ms$/m);
    expect(second.out()).not.toContain('was added');
  });
  test('golden: after a hard end the version that was confirmed is there', async () => {
    const first = await serve([]);
    const sent = { basedOn: 0, status: 'draft', text: 'a: 1\n', by: 'Kim' };
    const answer = await fetch(`${first.url ?? ''}api/documents/brief/oak/versions`, {
      ...{ method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(sent) },
    });
    expect(answer.status).toBe(201);
    first.server.kill('SIGKILL');
    await first.ended;
    const second = await serve([]);
    expect(await documents(second.url)).toContainEqual(expect.objectContaining({ id: 'oak', version: 1 }));
    second.server.kill('SIGTERM');
    expect(await second.ended).toEqual({ code: 0 });
  });
  test('refuses: a second process on the same store, by its number; the first goes on', async () => {
    const first = await serve([]);
    const second = await serve([]);
    expect(await second.ended).toEqual({ code: 3 });
    expect(second.problem()).toContain(`process ${String(first.server.pid)}`);
    expect(second.problem().trim().split('\n')).toHaveLength(1);
    expect((await fetch(`${first.url ?? ''}api/health`)).status).toBe(200);
    first.server.kill('SIGKILL');
    await first.ended;
  });
  test('refuses: a port in use, in one sentence', async () => {
    const { port, free } = await portInUse();
    const { ended, problem, url } = await serve(['--port', port]);
    expect([await ended, url]).toEqual([{ code: 3 }, undefined]);
    expect(problem()).toMatch(new RegExp(`^Port ${port} is in use .*--port or PORT\\.\n$`));
    free();
  });
  test('refuses: an address that this machine does not have', async () => {
    // RFC 5737: 192.0.2.0/24 is for documentation
    const { ended, problem } = await serve(['--host', '192.0.2.1']);
    expect(await ended).toEqual({ code: 3 });
    expect(problem()).toMatch(/^This machine has no address 192\.0\.2\.1; .*\n$/);
  });
  test('refuses: a folder that holds something else, and leaves it as it is', async () => {
    const data = join(folder, 'foreign');
    mkdirSync(data);
    writeFileSync(join(data, 'letters.txt'), 'a');
    const { ended, problem } = await serve([], { FILLWRIGHT_DATA: data });
    expect(await ended).toEqual({ code: 3 });
    expect(problem()).toMatch(/^.*letters\.txt.*\n$/);
    expect(existsSync(join(data, 'store'))).toBe(false);
  });
  // Whoever may write everywhere is not stopped by a mode: then a place where nobody can make a folder stands for it.
  test('refuses: a folder that may not be written to', async () => {
    const data = join(folder, 'read-only');
    mkdirSync(data);
    chmodSync(data, 0o500);
    const place = process.getuid?.() === 0 ? join(PROGRAM, 'data') : join(data, 'store');
    const { ended, problem } = await serve([], { FILLWRIGHT_DATA: place });
    expect(await ended).toEqual({ code: 3 });
    expect(problem().trim().split('\n')).toHaveLength(1);
    expect(problem()).not.toContain('unexpected');
  });
  test('refuses: a wrong flag and a wrong port at once', async () => {
    const { ended, problem } = await serve(['--prot', '1'], { PORT: '99999' });
    expect(await ended).toEqual({ code: 2 });
    expect(problem()).toMatch(/--port/);
    expect(problem()).toMatch(/PORT is/);
  });
  test('limit: a second signal ends it at once', async () => {
    const { server, ended } = await serve([]);
    server.kill('SIGTERM');
    server.kill('SIGINT');
    expect([0, 3]).toContain((await ended).code);
  });
});

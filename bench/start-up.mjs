import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const READY = /http:\/\/\S+/;

/** `fillwright serve` from the start of the process to the line that says it is ready: a new store, then after a clean stop. */
export async function round() {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    const first_ms = await wallOfStart(folder);
    const second_ms = await wallOfStart(folder);
    return [
      { figure: 'first start, makes the store', unit: 'ms', wall_ms: first_ms },
      {
        ...{ figure: 'second start, after a clean stop', unit: 'ms', wall_ms: second_ms },
        aim: { kind: 'wall', limit: 3000 },
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function wallOfStart(folder) {
  const begun = performance.now();
  const server = spawn(process.execPath, ['apps/fillwright/bin/fillwright.mjs', 'serve', '--demo', '--port', '0'], {
    env: { ...process.env, DATABASE_URL: '', FILLWRIGHT_DATA: folder },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = once(server, 'exit');
  for await (const text of server.stdout) if (READY.test(String(text))) break;
  const wall_ms = performance.now() - begun;
  server.kill('SIGTERM');
  const [code] = await ended;
  if (code !== 0) throw new Error(`the server ended with ${code}`);
  return wall_ms;
}

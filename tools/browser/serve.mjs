import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const PROGRAM = fileURLToPath(new URL('../../apps/fillwright/bin/fillwright.mjs', import.meta.url));
const READY = /http:\/\/\S+/;

/**
 * The real server in a process of its own, on a free port and a new store folder; after `kill` (as when the power goes)
 * `start` brings it back on the same folder and port.
 *
 * @param {readonly string[]} [flags] - flags of `fillwright serve`
 */
export async function serve(flags = ['--demo']) {
  const folder = await mkdtemp(join(tmpdir(), 'fillwright-'));
  let process_ = await begin({ flags, folder, port: '0' });
  const url = process_.url;
  const { port } = new URL(url);
  return {
    /** Its address, without a slash at the end. */
    url,
    folder,
    async start() {
      process_ = await begin({ flags, folder, port });
    },
    async kill() {
      await end(process_.child, 'SIGKILL');
    },
    /** Ends it as a person does, and removes the folder. */
    async stop() {
      await end(process_.child, 'SIGTERM');
      await rm(folder, { recursive: true, force: true });
    },
  };
}

/** Starts the process; kept once it says that it is ready. */
async function begin({ flags, folder, port }) {
  const child = spawn(process.execPath, [PROGRAM, 'serve', '--port', port, ...flags], {
    env: { ...process.env, DATABASE_URL: '', HOST: '', FILLWRIGHT_DATA: folder },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  const ready = new Promise((resolve, reject) => {
    const hear = (text) => {
      said += String(text);
      const [url] = READY.exec(said) ?? [];
      if (url) resolve(url.replace(/\/$/, ''));
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', (text) => void (said += String(text)));
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`the server ended with ${code} before it was ready: ${said}`)));
  });
  return { child, url: await ready };
}

async function end(child, signal) {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const ended = once(child, 'exit');
  child.kill(signal);
  await ended;
}

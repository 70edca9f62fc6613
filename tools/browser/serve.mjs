import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const PROGRAM = fileURLToPath(new URL('../../apps/fillwright/bin/fillwright.mjs', import.meta.url));
const READY = /http:\/\/\S+/;

/**
 * The real `fillwright serve` as a process of its own, on a free port and on a store in a temp folder of its own.
 *
 * @param {{ isDemo?: boolean }} [options] - whether the store has the demo product; else it is empty
 */
export async function serve({ isDemo = false } = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'browser-'));
  const first = await started({ folder, port: '0', isDemo });
  const { url } = first;
  const { port } = new URL(url);
  let running = first;
  const end = async (signal) => {
    running.child.kill(signal);
    return running.ended;
  };
  return {
    /** With a slash at its end; the same after a restart. */
    url,
    /** Asks the interface. @returns the parsed answer */
    ask: async (path) => (await fetch(`${url}api/${path}`)).json(),
    /** Keeps a text as the first version of a product, of which a test has one of its own. */
    put: async (id, text) => {
      const answer = await fetch(`${url}api/documents/brief/${id}/versions`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ basedOn: 0, status: 'draft', text, by: 'Kim' }),
      });
      if (!answer.ok) throw new Error(`${id}: ${await answer.text()}`);
    },
    /** As a crash ends it: it gets no chance to tidy up. */
    kill: () => end('SIGKILL'),
    /** Starts it again after its end, on the same port and folder. */
    restart: async () => {
      running = await started({ folder, port, isDemo: false });
    },
    /** Ends it as a person does, and removes its store. Throws when it did not end well. */
    close: async () => {
      const code = running.child.exitCode === null && running.child.signalCode === null ? await end('SIGTERM') : 0;
      rmSync(folder, { recursive: true, force: true });
      if (code !== 0) throw new Error(`the server ended with ${code}: ${running.problem()}`);
    },
  };
}

/** A server that has said that it is ready. */
async function started({ folder, port, isDemo }) {
  const args = [PROGRAM, 'serve', '--host', '127.0.0.1', '--port', port, ...(isDemo ? ['--demo'] : [])];
  const child = spawn(process.execPath, args, {
    env: { ...process.env, DATABASE_URL: '', FILLWRIGHT_NAMES: '', FILLWRIGHT_DATA: join(folder, 'data') },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const leaveNone = () => child.kill('SIGKILL');
  process.once('exit', leaveNone);
  let problem = '';
  child.stderr.on('data', (text) => (problem += String(text)));
  const ended = once(child, 'close').then(([code]) => {
    process.off('exit', leaveNone);
    return code;
  });
  /** @type {string} */
  const url = await new Promise((resolve, reject) => {
    child.stdout.on('data', (text) => {
      const [found] = READY.exec(String(text)) ?? [];
      if (found) resolve(found);
    });
    void ended.then((code) => reject(new Error(`the server ended with ${code} before it was ready: ${problem}`)));
  });
  return { child, ended, url, problem: () => problem };
}

import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { realpathSync, rmSync, statSync } from 'node:fs';
import { connect, createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { StoreError } from './store-error.ts';

/**
 * Makes this process the only one that uses a folder. The kernel frees the lock when the process ends, however it ends.
 * It does not protect a folder that two hosts or containers share.
 *
 * @param folder - a folder that is there
 * @returns what frees it
 * @throws StoreError "locked" with the number of the process that has it
 */
export async function lockFolder(folder: string): Promise<() => Promise<void>> {
  const name = lockName(folder);
  let server = await listen(name);
  // Only where the socket is a file: nobody answers on it after a kill.
  if (!server && name.endsWith('.sock') && (await ownerOf(name)) === undefined) {
    rmSync(name, { force: true });
    server = await listen(name);
  }
  if (!server) throw new StoreError('locked', { place: folder, process: (await ownerOf(name)) ?? 'unknown' });
  const held = server;
  return async () => {
    held.close();
    await once(held, 'close');
  };
}

/** A name in the kernel's own space, from what identifies the folder: two paths to one folder give one name. */
function lockName(folder: string): string {
  const { dev, ino } = statSync(realpathSync(folder));
  const id = `fillwright-${createHash('sha256').update(`${dev}:${ino}`).digest('hex').slice(0, 24)}`;
  if (process.platform === 'linux') return `\0${id}`;
  return process.platform === 'win32' ? `\\\\.\\pipe\\${id}` : join(tmpdir(), `${id}.sock`);
}

async function listen(name: string): Promise<Server | undefined> {
  const server = createServer((asking) => {
    asking.on('error', () => undefined);
    asking.end(String(process.pid));
  });
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE' || error.code === 'EACCES') resolve(undefined);
      else reject(error);
    });
    server.listen(name, () => {
      server.unref();
      resolve(server);
    });
  });
}

async function ownerOf(name: string): Promise<string | undefined> {
  return new Promise((resolve) => {
    let text = '';
    const asked = connect(name);
    asked.setEncoding('utf8');
    asked.on('data', (part: string) => (text += part));
    asked.on('end', () => {
      resolve(text);
    });
    asked.on('error', () => {
      resolve(undefined);
    });
  });
}

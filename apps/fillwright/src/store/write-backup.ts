import { createHash } from 'node:crypto';
import { open, rm, type FileHandle } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { BACKUP_FORM } from './backup-form.ts';
import { eachVersion } from './each-version.ts';
import { StoreError } from './store-error.ts';
import type { Store } from './store.ts';
import { syncFolder } from './sync-folder.ts';

/**
 * Writes everything that is kept into one text file: a line a version, then a line a head, then counts and check sum.
 * Returns when it has reached the disk. Nothing is overwritten; what could not be finished is taken away again.
 *
 * @param store - the store
 * @param file - the file, which is not there yet
 * @param at - when: ISO 8601 in UTC
 * @throws StoreError "backup-exists" or "backup-unwritable"
 */
export async function writeBackup(store: Store, file: string, at: string): Promise<void> {
  const handle = await open(file, 'wx').catch((error: unknown) => {
    throw troubleOf(error, file);
  });
  try {
    await write(store, handle, at);
    await handle.sync();
    await handle.close();
    await syncFolder(dirname(resolve(file)));
  } catch (error) {
    await handle.close().catch(() => undefined);
    await rm(file, { force: true });
    throw error instanceof StoreError ? error : troubleOf(error, file);
  }
}

async function write(store: Store, handle: FileHandle, at: string): Promise<void> {
  const hash = createHash('sha256');
  const counts = { versions: 0, heads: 0 };
  const line = async (content: unknown): Promise<void> => {
    const text = `${JSON.stringify(content)}\n`;
    hash.update(text);
    await handle.appendFile(text);
  };
  await line({ ...BACKUP_FORM, at });
  await store.db.tx(async (tx) => {
    await tx.query('set transaction isolation level repeatable read');
    await eachVersion(tx, async (stored) => {
      counts.versions++;
      await line(stored);
    });
    const heads = await tx.query('select site, kind, id, version, sha256 from fillwright.head order by site, kind, id');
    for (const head of heads) await line({ head });
    counts.heads = heads.length;
  });
  await handle.appendFile(`${JSON.stringify({ end: { ...counts, sha256: hash.digest('hex') } })}\n`);
}

function troubleOf(error: unknown, file: string): unknown {
  const { code, message } = error as NodeJS.ErrnoException;
  if (code === 'EEXIST') return new StoreError('backup-exists', { file });
  return code === undefined ? error : new StoreError('backup-unwritable', { file, why: message });
}

import { existsSync } from 'node:fs';
import { mkdir, open, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { syncFolder } from './sync-folder.ts';

const BACKUPS = 'backups';

/**
 * Keeps the database as it was before a step of its form; one that is already there is left as it is.
 *
 * @param dump - the whole database folder as one compressed archive (tar, gzip)
 * @param place - data folder, and number of the step
 */
export async function keepDump(
  dump: Uint8Array,
  { folder, before }: { folder: string; before: number },
): Promise<void> {
  const backups = join(folder, BACKUPS);
  const path = join(backups, `before-migration-${String(before).padStart(4, '0')}.tar.gz`);
  if (existsSync(path)) return;
  await mkdir(backups, { recursive: true });
  const file = await open(`${path}.new`, 'w');
  try {
    await file.writeFile(dump);
    await file.sync();
  } finally {
    await file.close();
  }
  await rename(`${path}.new`, path);
  await syncFolder(backups);
  await syncFolder(folder);
}

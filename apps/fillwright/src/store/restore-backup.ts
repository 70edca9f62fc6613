import { beginChain } from './begin-chain.ts';
import type { Audit } from './finding.ts';
import type { HeadNote } from './heads-log.ts';
import { insertVersion } from './insert-version.ts';
import { readBackup } from './read-backup.ts';
import { StoreError } from './store-error.ts';
import type { Store } from './store.ts';

/**
 * Puts all versions of a backup into an empty store: all of them, or none when the backup is not in order.
 *
 * @param store - a store without any version
 * @param file - the backup
 * @returns what the backup holds, or what is wrong with it
 * @throws StoreError "not-empty", "backup-unreadable"
 */
export async function restoreBackup(store: Store, file: string): Promise<Audit> {
  const before = await readBackup(file);
  if (before.verdict !== 'pass') return before;
  const notes: HeadNote[] = [];
  await store.db.tx(async (tx) => {
    await tx.query('lock table fillwright.head in exclusive mode');
    const [row] = await tx.query<{ count: number }>('select count(*)::int as count from fillwright.document');
    const versionCount = row?.count ?? 0;
    if (versionCount > 0) throw new StoreError('not-empty', { place: store.place, versionCount });
    notes.length = 0;
    const read = await readBackup(file, async (stored) => {
      const { site, kind, id, version, sha256 } = stored;
      if (version === 1) await beginChain(tx, { site, kind, id });
      await insertVersion(tx, stored);
      notes.push({ site, kind, id, version, sha256 });
    });
    if (read.verdict !== 'pass') throw new StoreError('backup-unreadable', { file, why: 'it changed meanwhile' });
  });
  await store.headsLog.append(notes);
  return before;
}

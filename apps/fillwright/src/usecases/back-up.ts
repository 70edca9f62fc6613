import type { Audit } from '../store/finding.ts';
import { readBackup } from '../store/read-backup.ts';
import type { Store } from '../store/store.ts';
import { writeBackup } from '../store/write-backup.ts';

/**
 * Writes everything into one text file, then reads it back: a backup that nobody read is none.
 *
 * @param store - the store
 * @param file - a file that is not there yet
 * @param at - when: ISO 8601 in UTC
 * @returns what the file holds, and whether it is in order
 * @throws StoreError "backup-exists", "backup-unwritable"
 */
export async function backUp(store: Store, file: string, at: string): Promise<Audit> {
  await writeBackup(store, file, at);
  return readBackup(file);
}

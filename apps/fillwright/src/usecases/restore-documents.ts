import type { Audit } from '../store/finding.ts';
import { restoreBackup } from '../store/restore-backup.ts';
import type { Store } from '../store/store.ts';

/**
 * Puts a backup into an empty store: all of it, or nothing when it is not in order.
 *
 * @param store - a store without any version
 * @param file - the backup
 * @returns verdict, counts and findings of the backup
 * @throws StoreError "not-empty", "backup-unreadable"
 */
export async function restoreDocuments(store: Store, file: string): Promise<Audit> {
  return restoreBackup(store, file);
}

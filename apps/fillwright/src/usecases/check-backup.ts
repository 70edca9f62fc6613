import type { Audit } from '../store/finding.ts';
import { readBackup } from '../store/read-backup.ts';

/**
 * Reads a backup and verifies every hash and that it is whole; changes nothing.
 *
 * @param file - the backup
 * @returns verdict, counts and findings
 * @throws StoreError "backup-unreadable"
 */
export async function checkBackup(file: string): Promise<Audit> {
  return readBackup(file);
}

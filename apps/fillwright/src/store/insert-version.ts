import type { StoredVersion } from './chain.ts';
import type { Db } from './db.ts';

/**
 * Writes one row of table `document`.
 *
 * @param tx - the transaction
 * @param stored - the version, with its hash
 */
export async function insertVersion(tx: Pick<Db, 'query'>, stored: StoredVersion): Promise<void> {
  const { site, kind, id, version, status, text, sha256, previous, by, at, reason } = stored;
  await tx.query(
    `insert into fillwright.document (site, kind, id, version, status, text, sha256, previous, by, at, reason)
     values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)`,
    [site, kind, id, version, status, text, sha256, previous, by, at, reason],
  );
}

import type { StoredVersion } from './chain.ts';
import type { Db } from './db.ts';

/**
 * Writes one row of table `document` and moves the head of its chain to it, in one statement.
 *
 * @param tx - a transaction in which the row of the head is there and locked
 * @param stored - the version, with its hash
 */
export async function insertVersion(tx: Pick<Db, 'query'>, stored: StoredVersion): Promise<void> {
  const { site, kind, id, version, status, text, sha256, previous, by, at, reason } = stored;
  await tx.query(
    `with kept as (
       insert into fillwright.document (site, kind, id, version, status, text, sha256, previous, by, at, reason)
       values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)
     )
     update fillwright.head set version = $4, sha256 = $7 where site = $1 and kind = $2 and id = $3`,
    [site, kind, id, version, status, text, sha256, previous, by, at, reason],
  );
}

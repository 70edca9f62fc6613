import type { Chain } from './chain.ts';
import type { Db } from './db.ts';

/**
 * Makes the row of a chain that holds no version yet; one that is there is left as it is.
 *
 * @param tx - the transaction
 * @param chain - the document
 */
export async function beginChain(tx: Pick<Db, 'query'>, { site, kind, id }: Chain): Promise<void> {
  await tx.query(
    `insert into fillwright.head (site, kind, id, version, sha256) values ($1, $2, $3, 0, '') on conflict do nothing`,
    [site, kind, id],
  );
}

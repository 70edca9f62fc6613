import { versionSchema, type DocumentVersion } from '@fillwright/contract/documents';
import type { Chain } from './chain.ts';
import { checkedRow } from './checked-row.ts';
import type { Store } from './store.ts';
import { VERSION_COLUMNS } from './version-columns.ts';

/**
 * The newest version of a document.
 *
 * @param store - the store, or a transaction on it
 * @param chain - the document
 * @returns the version; undefined when there is no such document
 * @throws StoreError "garbled" when the row is not in order
 */
export async function newestVersion(
  store: Pick<Store, 'place'> & { readonly db: Pick<Store['db'], 'query'> },
  { site, kind, id }: Chain,
): Promise<DocumentVersion | undefined> {
  const [row] = await store.db.query(
    `select ${VERSION_COLUMNS} from fillwright.document
     where site = $1 and kind = $2 and id = $3 order by version desc limit 1`,
    [site, kind, id],
  );
  return row === undefined ? undefined : checkedRow(row, versionSchema, store.place);
}

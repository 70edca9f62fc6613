import { versionSchema, type DocumentVersion } from '@fillwright/contract/documents';
import type { Chain } from './chain.ts';
import { checkedRow } from './checked-row.ts';
import type { Store } from './store.ts';
import { VERSION_COLUMNS } from './version-columns.ts';

/**
 * One version of a document.
 *
 * @param store - the store
 * @param chain - the document
 * @param version - its number, from 1
 * @returns the version; undefined when there is none of this number
 * @throws StoreError "garbled" when the row is not in order
 */
export async function oneVersion(
  store: Store,
  { site, kind, id }: Chain,
  version: number,
): Promise<DocumentVersion | undefined> {
  const [row] = await store.db.query(
    `select ${VERSION_COLUMNS} from fillwright.document
     where site = $1 and kind = $2 and id = $3 and version = $4`,
    [site, kind, id, version],
  );
  return row === undefined ? undefined : checkedRow(row, versionSchema, store.place);
}

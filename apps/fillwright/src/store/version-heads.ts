import { versionHeadSchema, type DocumentVersionHead } from '@fillwright/contract/documents';
import type { Chain } from './chain.ts';
import { checkedRow } from './checked-row.ts';
import type { Store } from './store.ts';
import { HEAD_COLUMNS } from './version-columns.ts';

/**
 * All versions of a document without their texts.
 *
 * @param store - the store
 * @param chain - the document
 * @returns the versions, the oldest first; none when there is no such document
 * @throws StoreError "garbled" when a row is not in order
 */
export async function versionHeads(store: Store, { site, kind, id }: Chain): Promise<readonly DocumentVersionHead[]> {
  const rows = await store.db.query(
    `select ${HEAD_COLUMNS} from fillwright.document
     where site = $1 and kind = $2 and id = $3 order by version`,
    [site, kind, id],
  );
  return rows.map((row) => checkedRow(row, versionHeadSchema, store.place));
}

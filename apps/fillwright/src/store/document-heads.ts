import { versionHeadSchema, type DocumentVersionHead } from '@fillwright/contract/documents';
import type { Chain } from './chain.ts';
import { checkedRow } from './checked-row.ts';
import type { Store } from './store.ts';
import { HEAD_COLUMNS } from './version-columns.ts';

/**
 * The newest version of each document of a kind, without its text.
 *
 * @param store - the store
 * @param of - site and kind
 * @returns one entry a document, the one that was changed last first
 * @throws StoreError "garbled" when a row is not in order
 */
export async function documentHeads(
  store: Store,
  { site, kind }: Omit<Chain, 'id'>,
): Promise<readonly DocumentVersionHead[]> {
  const rows = await store.db.query(
    `select ${HEAD_COLUMNS.split(', ')
      .map((column) => `d.${column}`)
      .join(', ')}
     from fillwright.head h
     join fillwright.document d on (d.site, d.kind, d.id, d.version) = (h.site, h.kind, h.id, h.version)
     where h.site = $1 and h.kind = $2 order by d.at desc, d.id`,
    [site, kind],
  );
  return rows.map((row) => checkedRow(row, versionHeadSchema, store.place));
}

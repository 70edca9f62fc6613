import type { StoredVersion } from './chain.ts';
import type { Db } from './db.ts';
import { VERSION_COLUMNS } from './version-columns.ts';

const PAGE = 200;

/**
 * Shows every version, in the order of site, kind, id and version, by pages, so that memory stays small.
 *
 * @param db - a transaction that sees one state of the store
 * @param show - called with each
 */
export async function eachVersion(
  db: Pick<Db, 'query'>,
  show: (stored: StoredVersion) => void | Promise<void>,
): Promise<void> {
  let after: readonly unknown[] = ['', '', '', 0];
  for (;;) {
    const page = await db.query<StoredVersion>(
      `select site, ${VERSION_COLUMNS} from fillwright.document
       where (site, kind, id, version) > ($1, $2, $3, $4) order by site, kind, id, version limit ${PAGE}`,
      after,
    );
    for (const stored of page) await show(stored);
    const last = page.at(-1);
    if (last === undefined || page.length < PAGE) return;
    after = [last.site, last.kind, last.id, last.version];
  }
}

import type { DocumentVersion, NewVersion } from '@fillwright/contract/documents';
import { beginChain } from './begin-chain.ts';
import type { Chain } from './chain.ts';
import type { Db } from './db.ts';
import { insertVersion } from './insert-version.ts';
import { newestVersion } from './newest-version.ts';
import type { Store } from './store.ts';
import { versionHash } from './version-hash.ts';

/** What a person sends, and when: ISO 8601 in UTC. */
export interface SentVersion extends NewVersion {
  readonly at: string;
}

/** What became of it. */
export type Appended =
  | { readonly outcome: 'kept'; readonly version: DocumentVersion }
  /** It was made on an older version: nothing was kept. `current` is undefined when there is no version at all. */
  | { readonly outcome: 'conflict'; readonly current: DocumentVersion | undefined }
  /** It would supersede this saved version without a reason: nothing was kept. */
  | { readonly outcome: 'reason-missing'; readonly supersedes: number };

type Tx = Pick<Db, 'query'>;

/**
 * Appends one version to its chain. Sent twice, as after a lost connection, it is kept once.
 *
 * @param store - the store
 * @param chain - the document
 * @param sent - the version; `basedOn` is the newest version the person has seen, 0 for none
 * @returns the version when it has reached the disk, or why it was not kept
 * @throws StoreError when the store cannot do it
 */
export async function appendVersion(store: Store, chain: Chain, sent: SentVersion): Promise<Appended> {
  const appended = await store.db.tx(async (tx): Promise<Appended> => {
    if (!(await lockHead(tx, chain, sent.basedOn))) return { outcome: 'conflict', current: undefined };
    const current = await newestVersion({ place: store.place, db: tx }, chain);
    if (current && isRepeated(current, sent)) return { outcome: 'kept', version: current };
    if ((current?.version ?? 0) !== sent.basedOn) return { outcome: 'conflict', current };
    const supersedes = sent.status === 'saved' && sent.reason === undefined ? await lastSaved(tx, chain) : undefined;
    if (supersedes !== undefined) return { outcome: 'reason-missing', supersedes };
    return { outcome: 'kept', version: await insert(tx, { chain, sent, current }) };
  });
  if (appended.outcome === 'kept') {
    const { version, sha256 } = appended.version;
    await store.headsLog.append([{ ...chain, version, sha256 }]);
  }
  return appended;
}

/** Whoever holds the row of the head is alone with the chain. False when the chain is not begun and must be. */
async function lockHead(tx: Tx, chain: Chain, basedOn: number): Promise<boolean> {
  const lock = 'select 1 from fillwright.head where site = $1 and kind = $2 and id = $3 for update';
  const key = [chain.site, chain.kind, chain.id];
  if ((await tx.query(lock, key)).length > 0) return true;
  if (basedOn !== 0) return false;
  await beginChain(tx, chain);
  await tx.query(lock, key);
  return true;
}

function isRepeated(current: DocumentVersion, sent: SentVersion): boolean {
  return (
    current.version === sent.basedOn + 1 &&
    current.text === sent.text &&
    current.status === sent.status &&
    current.by === sent.by &&
    current.reason === (sent.reason ?? null)
  );
}

async function lastSaved(tx: Tx, { site, kind, id }: Chain): Promise<number | undefined> {
  const [row] = await tx.query<{ version: number }>(
    `select version from fillwright.document
     where site = $1 and kind = $2 and id = $3 and status = 'saved' order by version desc limit 1`,
    [site, kind, id],
  );
  return row?.version;
}

interface Link {
  readonly chain: Chain;
  readonly sent: SentVersion;
  readonly current: DocumentVersion | undefined;
}

async function insert(tx: Tx, { chain, sent, current }: Link): Promise<DocumentVersion> {
  const { site, kind, id } = chain;
  const { status, text, by, at, reason = null } = sent;
  const version = (current?.version ?? 0) + 1;
  const previous = current?.sha256 ?? null;
  const sha256 = versionHash({ site, kind, id, version, status, text, previous, by, at, reason });
  await insertVersion(tx, { site, kind, id, version, status, text, sha256, previous, by, at, reason });
  return { kind, id, version, status, text, sha256, previous, by, at, reason };
}

import { statfs } from 'node:fs/promises';
import { asStoreError } from './as-store-error.ts';
import type { Db } from './db.ts';
import { StoreError } from './store-error.ts';
import { startThread } from './start-thread.ts';

/** The embedded database, and what only it can do. */
export interface EmbeddedDb extends Db {
  /** The whole database folder as one compressed archive. */
  readonly dump: () => Promise<Uint8Array>;
  /** Syncs that reached the disk since it was opened. */
  readonly syncCount: () => number;
}

export interface EmbeddedOptions {
  readonly folder: string;
  /** How a person knows it. */
  readonly place: string;
  /** Longest wait for an answer. */
  readonly patience_s: number;
  /** Least room on the disk for a change. */
  readonly leastRoom_bytes: number;
}

/**
 * Opens the embedded database in a thread of its own; makes it when the folder is empty. The caller holds the lock of the
 * folder. One call after the other; a transaction keeps all others waiting.
 *
 * @param options - where, and how patient
 * @returns the database
 * @throws StoreError "full" before anything is touched, "garbled" when it does not open
 */
export async function openEmbedded(options: EmbeddedOptions): Promise<EmbeddedDb> {
  const { place } = options;
  await requireRoom(options);
  const thread = await startThread(options).catch((error: unknown) => {
    const known = asStoreError(error, place);
    if (known instanceof StoreError) throw known;
    throw new StoreError('garbled', { place, why: error instanceof Error ? error.message : String(error) });
  });
  let tail: Promise<unknown> = Promise.resolve();
  const inTurn = <Result>(work: () => Promise<Result>): Promise<Result> => {
    const result = tail.then(work);
    tail = result.catch(() => undefined);
    return result;
  };
  const query = async <Row>(text: string, parameters: readonly unknown[] = []): Promise<readonly Row[]> => {
    try {
      const answer = await thread.ask({ kind: 'query', text, parameters });
      return 'rows' in answer ? (answer.rows as readonly Row[]) : [];
    } catch (error) {
      throw asStoreError(error, place);
    }
  };
  return {
    query: (text, parameters) => inTurn(() => query(text, parameters)),
    tx: (work) =>
      inTurn(async () => {
        await requireRoom(options);
        await query('begin');
        try {
          const result = await work({ query });
          await query('commit');
          return result;
        } catch (error) {
          await query('rollback').catch(() => undefined);
          throw error;
        }
      }),
    dump: () =>
      inTurn(async () => {
        const answer = await thread.ask({ kind: 'dump' });
        return 'dump' in answer ? answer.dump : new Uint8Array();
      }),
    syncCount: thread.syncCount,
    close: async () => {
      await inTurn(() => thread.ask({ kind: 'close' })).catch(() => undefined);
      await thread.end();
    },
  };
}

/** A full disk is refused before the database meets it: where its journal cannot grow, it would never answer again. */
async function requireRoom({ folder, place, leastRoom_bytes }: EmbeddedOptions): Promise<void> {
  const { bavail, bsize } = await statfs(folder);
  const room_MB = Math.floor((bavail * bsize) / 1e6);
  if (bavail * bsize < leastRoom_bytes)
    throw new StoreError('full', {
      place,
      why: `${room_MB} MB are free, ${Math.ceil(leastRoom_bytes / 1e6)} MB are needed`,
    });
}

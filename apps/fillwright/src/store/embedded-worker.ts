/** The thread in which the embedded database lives: nothing it does keeps the program from answering. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { PGlite } from '@electric-sql/pglite';
import type { Answer, Asked, Question, Reply } from './embedded-protocol.ts';
import { syncTree } from './sync-tree.ts';
import { SyncingFileSystem } from './syncing-file-system.ts';

/** In one process nobody else makes checkpoints: without them the journal, and the time to replay it after a kill, only grow. */
const COMMITS_PER_CHECKPOINT = 2000;

const port = parentPort;
if (!port) throw new Error('this file is started as a thread');

const folder = String(workerData);
const files = new SyncingFileSystem(folder);
let commitCount = 0;

const opened = await settled(async () => {
  const isNew = !existsSync(join(folder, 'PG_VERSION'));
  const db = await PGlite.create({ fs: files, startParams: startParameters() });
  if (isNew) syncTree(folder);
  return db;
});

if (opened.ok) {
  const db = opened.value;
  let tail = Promise.resolve();
  port.on('message', ({ number, asked }: Question) => {
    tail = tail.then(async () => {
      reply(number, await answered(db, asked));
      if (asked.kind === 'close') port.close();
      else await checkpoint(db, asked);
    });
  });
}
reply(0, opened.ok ? { rows: [] } : { error: opened.error });

/** Without `-F`, which means: no syncs at all. */
function startParameters(): string[] {
  const kept = PGlite.defaultStartParams.filter((parameter) => parameter !== '-F');
  return [...kept, '-c', 'fsync=on', '-c', 'wal_sync_method=fsync'];
}

function reply(number: number, answer: Answer): void {
  port?.postMessage({ number, answer, syncCount: files.syncCount } satisfies Reply);
}

async function answered(db: PGlite, asked: Asked): Promise<Answer> {
  const done = await settled(async (): Promise<Answer> => {
    if (asked.kind === 'query') return { rows: (await db.query(asked.text, [...asked.parameters])).rows };
    if (asked.kind === 'dump') return { dump: new Uint8Array(await (await db.dumpDataDir('gzip')).arrayBuffer()) };
    await db.close();
    return { rows: [] };
  });
  return done.ok ? done.value : { error: done.error };
}

/** After the answer, so that nobody waits for it unless more is asked at once. */
async function checkpoint(db: PGlite, asked: Asked): Promise<void> {
  if (asked.kind !== 'query' || asked.text !== 'commit' || ++commitCount % COMMITS_PER_CHECKPOINT !== 0) return;
  await settled(() => db.query('checkpoint'));
}

type Settled<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly error: { readonly message: string; readonly code?: string } };

async function settled<Value>(work: () => Promise<Value>): Promise<Settled<Value>> {
  try {
    return { ok: true, value: await work() };
  } catch (error) {
    const { message, code }: NodeJS.ErrnoException = error instanceof Error ? error : new Error(String(error));
    return { ok: false, error: { message, ...(code !== undefined && { code }) } };
  }
}

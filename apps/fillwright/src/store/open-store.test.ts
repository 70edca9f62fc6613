import { spawn } from 'node:child_process';
import { once } from 'node:events';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { startEngine, type Engine } from '../../fixtures/engine.ts';
import { appendVersion } from './append-version.ts';
import type { Chain } from './chain.ts';
import type { EmbeddedDb } from './embedded.ts';
import { lockFolder } from './lock-folder.ts';
import { openStore, type StoreSettings } from './open-store.ts';
import { StoreError } from './store-error.ts';
import type { Store } from './store.ts';
import { verifyChains } from './verify-chains.ts';

const CHAIN: Chain = { site: 'here', kind: 'brief', id: 'alder' };
const WRITER = fileURLToPath(new URL('../../fixtures/append-versions.mjs', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'open-store-'));
let engine: Engine;
beforeAll(async () => {
  engine = await startEngine('embedded');
});
afterAll(async () => {
  await engine.stop();
  rmSync(folder, { recursive: true, force: true });
});

async function opened(settings: StoreSettings): Promise<Store> {
  const store = await openStore(settings);
  onTestFinished(store.close);
  return store;
}

async function append(store: Store, basedOn: number): Promise<void> {
  const sent = {
    basedOn,
    status: 'draft',
    text: `text ${basedOn}`,
    by: 'ada',
    at: '2026-03-02T08:00:00.000Z',
  } as const;
  expect((await appendVersion(store, CHAIN, sent)).outcome).toBe('kept');
}

async function troubleOf(work: Promise<unknown>): Promise<StoreError> {
  try {
    await work;
  } catch (error) {
    if (error instanceof StoreError) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

/** Names and contents of all files, so that "nothing was changed" can be compared. */
function content(of: string): Readonly<Record<string, string>> {
  const names = readdirSync(of, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return Object.fromEntries(
    names.map(({ parentPath, name }) => [
      join(parentPath, name),
      readFileSync(join(parentPath, name)).toString('base64'),
    ]),
  );
}

describe('openStore, embedded', () => {
  test('golden: guard 1: each of 100 confirmed versions has reached the disk by a sync of its own', async () => {
    const store = await opened(await engine.fresh());
    const { syncCount } = store.db as EmbeddedDb;
    const before = syncCount();
    for (let basedOn = 0; basedOn < 100; basedOn++) await append(store, basedOn);
    expect(syncCount() - before).toBeGreaterThanOrEqual(100);
    const [settings] = await store.db.query(
      `select current_setting('fsync') as fsync, current_setting('synchronous_commit') as commit,
       current_setting('full_page_writes') as pages, current_setting('data_checksums') as checksums`,
    );
    expect(settings).toEqual({ fsync: 'on', commit: 'on', pages: 'on', checksums: 'on' });
  });

  test('refuses: guard 2: a second process, by the number of the first; free again after a kill', async () => {
    const settings = await engine.fresh();
    const child = spawn(process.execPath, [WRITER, JSON.stringify(settings)], { stdio: ['ignore', 'pipe', 'inherit'] });
    await once(child.stdout, 'data');
    const { code, facts } = await troubleOf(openStore(settings));
    expect([code, facts['process']]).toEqual(['locked', String(child.pid)]);
    child.kill('SIGKILL');
    await once(child, 'close');
    expect(await verifyChains(await opened(settings))).toMatchObject({
      findings: expect.not.arrayContaining([{ code: 'changed' }]) as object,
    });
  });

  test('refuses: guard 2: of many openers at once all but one; by another path to the folder too', async () => {
    const place = join(folder, 'lock');
    mkdirSync(place);
    const all = await Promise.allSettled(Array.from({ length: 8 }, () => lockFolder(place)));
    const won = all.filter((one) => one.status === 'fulfilled');
    expect(won).toHaveLength(1);
    expect((await troubleOf(lockFolder(join(folder, '..', folder.split('/').at(-1) ?? '', 'lock')))).code).toBe(
      'locked',
    );
    await won[0]?.value();
    await (
      await lockFolder(place)
    )();
  });

  test('golden: guard 3: while the database works, the program answers', async () => {
    const store = await opened(await engine.fresh());
    let ticks = 0;
    const timer = setInterval(() => ticks++, 5);
    await store.db.query('select sum(n) from generate_series(1, 2000000) n');
    clearInterval(timer);
    expect(ticks).toBeGreaterThan(10);
  });

  test('refuses: guard 4: what does not answer is ended, and every call fails with the reason', async () => {
    const settings = await engine.fresh();
    const store = await openStore({ ...settings, patience_s: 1 });
    await append(store, 0);
    const stuck = store.db.query('select sum(n) from generate_series(1, 1000000000000) n');
    const waiting = store.db.query('select 1');
    for (const call of [stuck, waiting, store.db.query('select 1')])
      expect(await troubleOf(call)).toMatchObject({ code: 'no-answer', facts: { patience_s: 1 } });
    await store.close();
    expect(await verifyChains(await opened(settings))).toMatchObject({ verdict: 'pass', versionCount: 1 });
  });

  test('refuses: a change without room on the disk; what was kept stays', async () => {
    const settings = await engine.fresh();
    const first = await openStore(settings);
    await append(first, 0);
    await first.close();
    const before = content(settings.dataFolder);
    const trouble = await troubleOf(openStore({ ...settings, leastRoom_bytes: Number.MAX_SAFE_INTEGER }));
    expect(trouble.code).toBe('full');
    expect(content(settings.dataFolder)).toEqual(before);
  });

  test('golden: a store is made in a new folder, and one whose making was interrupted is made again', async () => {
    const dataFolder = join(folder, 'new', 'deep');
    await (await openStore({ dataFolder, isToBeMade: true })).close();
    expect(readdirSync(dataFolder).sort()).toEqual(['heads.log', 'store', 'store.json']);
    writeFileSync(join(dataFolder, 'store.json'), JSON.stringify({ fillwright: 'store', form: 1, state: 'making' }));
    rmSync(join(dataFolder, 'store', 'base'), { recursive: true });
    await append(await opened({ dataFolder, isToBeMade: true }), 0);
  });

  test('golden: a folder in which only the note was begun (full disk, kill) is no stranger', async () => {
    const dataFolder = join(folder, 'begun');
    mkdirSync(dataFolder);
    writeFileSync(join(dataFolder, 'store.json.new'), '');
    await append(await opened({ dataFolder, isToBeMade: true }), 0);
  });

  test('refuses: no store where none is to be made', async () => {
    const dataFolder = join(folder, 'none');
    expect((await troubleOf(openStore({ dataFolder, isToBeMade: false }))).code).toBe('no-store');
    expect(existsSync(dataFolder)).toBe(false);
  });

  const DATABASE = join('store', 'PG_VERSION');
  test.each<[string, string, (place: string) => void]>([
    [
      'a newer form',
      'newer',
      (place) => {
        writeFileSync(join(place, 'store.json'), '{"fillwright":"store","form":2,"state":"ready"}');
      },
    ],
    [
      'a newer database',
      'newer',
      (place) => {
        writeFileSync(join(place, DATABASE), '19\n');
      },
    ],
    [
      'a database version that is none',
      'garbled',
      (place) => {
        writeFileSync(join(place, DATABASE), '\0\0');
      },
    ],
    [
      'no note of the store',
      'garbled',
      (place) => {
        rmSync(join(place, 'store.json'));
      },
    ],
    [
      'a note that is no JSON',
      'garbled',
      (place) => {
        writeFileSync(join(place, 'store.json'), '');
      },
    ],
    [
      'no database',
      'garbled',
      (place) => {
        rmSync(join(place, 'store'), { recursive: true });
      },
    ],
    [
      'an empty database folder',
      'garbled',
      (place) => {
        rmSync(join(place, 'store'), { recursive: true });
        mkdirSync(join(place, 'store'));
      },
    ],
    [
      'a zeroed control file',
      'garbled',
      (place) => {
        writeFileSync(join(place, 'store', 'global', 'pg_control'), Buffer.alloc(8192));
      },
    ],
    [
      'no journal',
      'garbled',
      (place) => {
        rmSync(join(place, 'store', 'pg_wal'), { recursive: true });
      },
    ],
  ])('refuses: %s -> %s', async (_, code, damage) => {
    const settings = await engine.fresh();
    damage(settings.dataFolder);
    const before = content(settings.dataFolder);
    expect((await troubleOf(openStore(settings))).code).toBe(code);
    const after = content(settings.dataFolder);
    for (const [path, bytes] of Object.entries(before))
      if (!path.endsWith('pid')) expect(after[path] === bytes, path).toBe(true);
  });

  test.each<[string, (place: string) => void]>([
    [
      'a folder with other files',
      (place) => {
        mkdirSync(place);
        writeFileSync(join(place, 'letter.txt'), 'mine');
      },
    ],
    [
      'a file',
      (place) => {
        writeFileSync(place, 'mine');
      },
    ],
  ])('refuses: %s -> foreign', async (name, make) => {
    const dataFolder = join(folder, name);
    make(dataFolder);
    expect((await troubleOf(openStore({ dataFolder, isToBeMade: true }))).code).toBe('foreign');
    expect((await troubleOf(openStore({ dataFolder: join(dataFolder, 'letter.txt'), isToBeMade: true }))).code).toBe(
      'foreign',
    );
  });

  test('refuses: a folder that may not be written to, empty or with a store', async () => {
    const place = join(folder, 'read-only');
    mkdirSync(place);
    const kept = await engine.fresh();
    chmodSync(folder, 0o755);
    for (const path of [place, kept.dataFolder]) chmodSync(path, 0o555);
    chmodSync(join(kept.dataFolder, 'heads.log'), 0o444);
    chmodSync(join(kept.dataFolder, '..'), 0o755);
    const code = await asNobody(async () => (await troubleOf(openStore({ dataFolder: place, isToBeMade: true }))).code);
    expect(code).toBe('read-only');
    expect(readdirSync(place)).toEqual([]);
    expect(await asNobody(async () => (await troubleOf(openStore(kept))).code)).toBe('read-only');
    chmodSync(kept.dataFolder, 0o755);
    chmodSync(join(kept.dataFolder, 'heads.log'), 0o644);
    await append(await opened(kept), 0);
  });
});

/** Root may write everywhere: where the tests run as root, `work` is done as somebody else. */
async function asNobody<Result>(work: () => Promise<Result>): Promise<Result> {
  if (process.geteuid?.() !== 0) return work();
  process.seteuid?.(65534);
  try {
    return await work();
  } finally {
    process.seteuid?.(0);
  }
}

import { existsSync } from 'node:fs';
import { mkdir, readdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { asStoreError } from './as-store-error.ts';
import { beginDataFolder, DATABASE_FOLDER, dataFolderState, HEADS_FILE, noteDataFolder } from './data-folder.ts';
import { openEmbedded } from './embedded.ts';
import { openHeadsLog } from './heads-log.ts';
import { keepDump } from './keep-dump.ts';
import { lockFolder } from './lock-folder.ts';
import { migrate } from './migrate.ts';
import { MIGRATIONS } from './migrations.ts';
import type { Migration } from './migration.ts';
import { openServer } from './server.ts';
import { StoreError } from './store-error.ts';
import type { Store } from './store.ts';

/** Where documents are kept, and how patient the program is. */
export interface StoreSettings {
  readonly dataFolder: string;
  /** A PostgreSQL server; without it the embedded store in the data folder. */
  readonly databaseUrl?: string | undefined;
  /** Whether a store is made where none is; something else is never replaced. */
  readonly isToBeMade: boolean;
  readonly migrations?: readonly Migration[];
  /** Embedded only: longest wait for an answer. */
  readonly patience_s?: number;
  /** Embedded only: least room for a change. The journal grows by files of 16 MB (PostgreSQL manual, 28.5): two of them. */
  readonly leastRoom_bytes?: number;
}

const USUAL = { migrations: MIGRATIONS, patience_s: 30, leastRoom_bytes: 32 * 1024 * 1024 };

/**
 * Opens the store: the server of `databaseUrl`, or the embedded one in the data folder.
 *
 * @param settings - where
 * @returns the store
 * @throws StoreError, one kind for each reason why it cannot be used; nothing is changed then
 */
export async function openStore(settings: StoreSettings): Promise<Store> {
  const all = { ...USUAL, ...settings, dataFolder: resolve(settings.dataFolder) };
  try {
    return all.databaseUrl === undefined || all.databaseUrl === ''
      ? await openFolder(all)
      : await openUrl(all, all.databaseUrl);
  } catch (error) {
    throw asStoreError(error, all.dataFolder);
  }
}

type Settings = StoreSettings & typeof USUAL;

async function openFolder(settings: Settings): Promise<Store> {
  const { dataFolder, isToBeMade } = settings;
  const before = await dataFolderState(dataFolder);
  const noStore = new StoreError('no-store', { place: dataFolder });
  if (before === 'none' && !isToBeMade) throw noStore;
  if (before === 'none') await makeFolder(dataFolder);
  const unlock = await lockFolder(dataFolder);
  try {
    // Another process may have made it while this one waited for the lock.
    const state = await dataFolderState(dataFolder);
    if (state !== 'ready' && !isToBeMade) throw noStore;
    if (state !== 'ready') await beginDataFolder(dataFolder);
    return await openLocked({ ...settings, isNew: state !== 'ready', unlock });
  } catch (error) {
    await unlock();
    throw error;
  }
}

/** Node says that a folder above is missing where it may only be read. */
async function makeFolder(folder: string): Promise<void> {
  await mkdir(folder, { recursive: true }).catch((error: unknown) => {
    const { code, message } = error as NodeJS.ErrnoException;
    throw code === 'ENOENT' ? new StoreError('read-only', { place: folder, why: message }) : error;
  });
}

async function openLocked(settings: Settings & { isNew: boolean; unlock: () => Promise<void> }): Promise<Store> {
  const { dataFolder: place, isNew, unlock, migrations } = settings;
  const headsLog = await openHeadsLog(join(place, HEADS_FILE), isNew);
  const db = await openEmbedded({ ...settings, folder: join(place, DATABASE_FOLDER), place }).catch(
    async (error: unknown) => {
      await headsLog.close();
      throw error;
    },
  );
  const store: Store = {
    ...{ db, headsLog, place },
    close: async () => {
      await db.close();
      await headsLog.close();
      await unlock();
    },
  };
  try {
    const backUp = async (before: number): Promise<void> => keepDump(await db.dump(), { folder: place, before });
    await migrate(db, { migrations, place, whenNone: isNew ? 'make' : 'garbled', backUp });
    if (isNew) await noteDataFolder(place, 'ready');
    return store;
  } catch (error) {
    await db.close();
    await headsLog.close();
    throw error;
  }
}

async function openUrl({ dataFolder, isToBeMade, migrations }: Settings, url: string): Promise<Store> {
  const place = withoutPassword(url);
  await requireListFolder(dataFolder);
  const db = await openServer({ url, place });
  try {
    await migrate(db, { migrations, place, whenNone: isToBeMade ? 'make' : 'no-store' });
    await makeFolder(dataFolder);
    // A list that is begun when versions are there already cannot tell which ones were there before.
    const isEmpty = (await db.query('select 1 from fillwright.document limit 1')).length === 0;
    const headsLog = await openHeadsLog(join(dataFolder, HEADS_FILE), isEmpty);
    return {
      ...{ db, headsLog, place },
      close: async () => {
        await db.close();
        await headsLog.close();
      },
    };
  } catch (error) {
    await db.close();
    throw error;
  }
}

/** The list of heads of one store must not run on in that of another one, and lies in no folder of somebody else. */
async function requireListFolder(folder: string): Promise<void> {
  const names = existsSync(folder) ? await readdir(folder) : [];
  if (names.length > 0 && !names.includes(HEADS_FILE))
    throw new StoreError('foreign', { place: folder, found: names.slice(0, 3).join(', ') });
  if (names.includes(DATABASE_FOLDER)) throw new StoreError('two-stores', { place: folder });
}

function withoutPassword(url: string): string {
  if (!URL.canParse(url) || !/^postgres(ql)?:/.test(url))
    throw new StoreError('unreachable', { place: 'of DATABASE_URL', why: 'it is not a postgres:// address' });
  const { pathname, host } = new URL(url);
  return `${pathname.slice(1)} at ${host === '' ? 'this machine' : host}`;
}

import { existsSync } from 'node:fs';
import { mkdir, open, readdir, readFile, rename, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { StoreError } from './store-error.ts';
import { syncFolder } from './sync-folder.ts';

/** What stands in the data folder. */
export const DATABASE_FOLDER = 'store';
export const HEADS_FILE = 'heads.log';
const MARKER_FILE = 'store.json';
const UNFINISHED_MARKER = `${MARKER_FILE}.new`;

/** Form of the data folder, and the database version whose files the embedded store reads. */
const FORM = 1;
const DATABASE_VERSION = '18';

/** Loose, so that a newer program may add to it. */
const MARKER = z.looseObject({
  fillwright: z.literal('store'),
  form: z.int().min(1),
  state: z.enum(['making', 'ready']),
});

/**
 * Looks at a data folder without changing anything in it.
 *
 * @param folder - the folder
 * @returns `none`: absent or empty; `unfinished`: making it was interrupted, nothing was kept in it yet; `ready`: a store
 * @throws StoreError "foreign", "garbled" or "newer"
 */
export async function dataFolderState(folder: string): Promise<'none' | 'unfinished' | 'ready'> {
  if (!existsSync(folder)) return 'none';
  if (!(await stat(folder)).isDirectory()) throw new StoreError('foreign', { place: folder, found: 'a file' });
  // A note that was begun and never finished (full disk, kill) is the first thing that a store leaves.
  const names = (await readdir(folder)).filter((name) => name !== UNFINISHED_MARKER);
  if (names.length === 0) return 'none';
  if (!names.includes(MARKER_FILE)) {
    const isOurs = names.includes(DATABASE_FOLDER) && names.includes(HEADS_FILE);
    if (isOurs) throw garbled(folder, `${MARKER_FILE} is missing`);
    throw new StoreError('foreign', { place: folder, found: names.slice(0, 3).join(', ') });
  }
  const { form, state } = await markerOf(folder);
  if (form > FORM) throw new StoreError('newer', { place: folder, found: form, known: FORM });
  if (state === 'making') return 'unfinished';
  await requireDatabase(folder);
  return 'ready';
}

/**
 * Notes the state of the data folder: the whole note, or the one before.
 *
 * @param folder - the folder
 * @param state - `making` until the database is there as a whole
 */
export async function noteDataFolder(folder: string, state: 'making' | 'ready'): Promise<void> {
  const path = join(folder, MARKER_FILE);
  const unfinished = join(folder, UNFINISHED_MARKER);
  const file = await open(unfinished, 'w');
  try {
    await file.writeFile(`${JSON.stringify({ fillwright: 'store', form: FORM, state })}\n`);
    await file.sync();
  } finally {
    await file.close();
  }
  await rename(unfinished, path);
  await syncFolder(folder);
}

/**
 * Makes room for a new database; what an interrupted making left is taken away, since no version was kept in it.
 *
 * @param folder - a data folder that is `none` or `unfinished`
 */
export async function beginDataFolder(folder: string): Promise<void> {
  await mkdir(folder, { recursive: true });
  await noteDataFolder(folder, 'making');
  for (const name of [DATABASE_FOLDER, HEADS_FILE]) await rm(join(folder, name), { recursive: true, force: true });
  await mkdir(join(folder, DATABASE_FOLDER));
}

async function markerOf(folder: string): Promise<z.infer<typeof MARKER>> {
  const text = await readFile(join(folder, MARKER_FILE), 'utf8');
  const marker = MARKER.safeParse(jsonOf(text));
  if (!marker.success) throw garbled(folder, `${MARKER_FILE} does not say what it should`);
  return marker.data;
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

async function requireDatabase(folder: string): Promise<void> {
  const path = join(folder, DATABASE_FOLDER, 'PG_VERSION');
  if (!existsSync(path)) throw garbled(folder, `${DATABASE_FOLDER}/PG_VERSION is missing`);
  const found = (await readFile(path, 'utf8')).trim();
  if (found === DATABASE_VERSION) return;
  if (/^\d+$/.test(found) && Number(found) > Number(DATABASE_VERSION))
    throw new StoreError('newer', { place: folder, found: `database ${found}`, known: `database ${DATABASE_VERSION}` });
  throw garbled(folder, `${DATABASE_FOLDER}/PG_VERSION says "${found.slice(0, 20)}"`);
}

function garbled(place: string, why: string): StoreError {
  return new StoreError('garbled', { place, why });
}

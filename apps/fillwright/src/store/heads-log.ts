import { existsSync } from 'node:fs';
import { open, readFile, type FileHandle } from 'node:fs/promises';
import { dirname } from 'node:path';
import { asStoreError } from './as-store-error.ts';
import { syncFolder } from './sync-folder.ts';

/** Which version was kept: what proves later that the last versions of a document were not removed. */
export interface HeadNote {
  readonly site: string;
  readonly kind: string;
  readonly id: string;
  readonly version: number;
  readonly sha256: string;
}

/** The list of heads as it was read. */
export interface HeadList {
  /** Whether it was begun together with the store. */
  readonly isWhole: boolean;
  readonly notes: readonly HeadNote[];
  /** Lines that cannot be read, counted from 1. */
  readonly garbledLines: readonly number[];
}

/** A text file beside the database: one line a version, only ever appended to. */
export interface HeadsLog {
  /** Returns when the lines have reached the disk. */
  readonly append: (notes: readonly HeadNote[]) => Promise<void>;
  readonly read: () => Promise<HeadList>;
  readonly close: () => Promise<void>;
}

const HEADING = '# Fillwright, list of heads. A line: site kind id version sha256';
const LINE = /^([^ ]+) ([^ ]+) ([^ ]+) ([1-9]\d{0,15}) ([0-9a-f]{64})$/;

/**
 * Opens the list of heads. A last line that was cut off by a power cut belongs to no confirmed version and is taken away.
 *
 * @param path - the file
 * @param isBegun - whether a missing file is begun with its heading; without it the audit tells that the list was lost
 * @returns the list
 * @throws StoreError "read-only" or "full"
 */
export async function openHeadsLog(path: string, isBegun: boolean): Promise<HeadsLog> {
  try {
    const isNew = !existsSync(path);
    if (!isNew) await cutTornLine(path);
    const file = await open(path, 'a');
    if (isNew && isBegun) await write(file, `${HEADING}\n`);
    if (isNew) await syncFolder(dirname(path));
    return logOn(file, path);
  } catch (error) {
    throw asStoreError(error, path);
  }
}

function logOn(file: FileHandle, path: string): HeadsLog {
  let tail: Promise<unknown> = Promise.resolve();
  return {
    append: async (notes) => {
      const lines = notes.map(({ site, kind, id, version, sha256 }) => `${site} ${kind} ${id} ${version} ${sha256}\n`);
      const done = tail.then(() => write(file, lines.join('')));
      tail = done.catch(() => undefined);
      await done.catch((error: unknown) => {
        throw asStoreError(error, path);
      });
    },
    read: async () => {
      await tail;
      return parse(await readFile(path, 'utf8'));
    },
    close: async () => {
      await tail;
      await file.close();
    },
  };
}

/** A part of a line, as a full disk leaves it, would spoil the next one: it is taken away again. */
async function write(file: FileHandle, text: string): Promise<void> {
  const { size } = await file.stat();
  try {
    await file.appendFile(text);
    await file.datasync();
  } catch (error) {
    await file.truncate(size).catch(() => undefined);
    throw error;
  }
}

async function cutTornLine(path: string): Promise<void> {
  const content = await readFile(path);
  const end = content.lastIndexOf('\n') + 1;
  if (end === content.length) return;
  const file = await open(path, 'r+');
  try {
    await file.truncate(end);
    await file.sync();
  } finally {
    await file.close();
  }
}

function parse(text: string): HeadList {
  const [heading, ...lines] = text.split('\n');
  const isWhole = heading === HEADING;
  const notes: HeadNote[] = [];
  const garbledLines: number[] = [];
  for (const [i, line] of (isWhole ? lines : [heading ?? '', ...lines]).entries()) {
    const [, site, kind, id, version, sha256] = LINE.exec(line) ?? [];
    if (site !== undefined && kind !== undefined && id !== undefined && sha256 !== undefined)
      notes.push({ site, kind, id, version: Number(version), sha256 });
    // Programs on one server that begin the list at the same moment each write its heading.
    else if (line !== '' && line !== HEADING) garbledLines.push(i + (isWhole ? 2 : 1));
  }
  return { isWhole, notes, garbledLines };
}

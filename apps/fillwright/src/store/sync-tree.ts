import { closeSync, fsyncSync, openSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Makes sure that a folder with everything in it has reached the disk.
 *
 * @param folder - the folder
 */
export function syncTree(folder: string): void {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) syncTree(path);
    else if (entry.isFile()) syncPath(path);
  }
  syncPath(folder);
}

function syncPath(path: string): void {
  // Windows cannot open a folder, and keeps its entries by itself.
  if (process.platform === 'win32') return;
  const handle = openSync(path, 'r');
  fsyncSync(handle);
  closeSync(handle);
}

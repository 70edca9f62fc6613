import { open } from 'node:fs/promises';

/**
 * Makes sure that the names in a folder have reached the disk.
 *
 * @param folder - the folder
 */
export async function syncFolder(folder: string): Promise<void> {
  // Windows cannot open a folder, and keeps its entries by itself.
  if (process.platform === 'win32') return;
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

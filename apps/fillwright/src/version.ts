import { readFileSync } from 'node:fs';

/**
 * The version of the program, from its package file.
 *
 * @returns for example `0.1.0`
 * @throws an error of the file system when the package file cannot be read
 */
export function version(): string {
  const text = readFileSync(new URL('../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}

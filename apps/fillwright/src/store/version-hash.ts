import { createHash } from 'node:crypto';
import type { StoredVersion } from './chain.ts';

/**
 * The hash of a version: SHA-256 over the UTF-8 of the JSON array
 * `[site, kind, id, version, status, previous, by, at, reason, text]`, without blanks, with null for what is not there.
 *
 * @param version - the version; its own `sha256` is not part of it
 * @returns 64 hexadecimal digits
 */
export function versionHash(version: Omit<StoredVersion, 'sha256'>): string {
  const { site, kind, id, version: number, status, previous, by, at, reason, text } = version;
  const canonical = JSON.stringify([site, kind, id, number, status, previous, by, at, reason, text]);
  return createHash('sha256').update(canonical).digest('hex');
}

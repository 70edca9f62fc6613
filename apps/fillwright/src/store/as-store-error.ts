import type { StoreTrouble } from '@fillwright/words/en';
import { StoreError } from './store-error.ts';

/** Codes of the file system, of the network, and of PostgreSQL (its manual, appendix A) that tell what is wrong with the place. */
const CODES: Readonly<Record<string, StoreTrouble>> = {
  ...{ ENOSPC: 'full', EDQUOT: 'full', EFBIG: 'full', '53100': 'full' },
  ...{ EROFS: 'read-only', EACCES: 'read-only', EPERM: 'read-only', '25006': 'read-only', '42501': 'read-only' },
  ...{ ENOTDIR: 'foreign', EISDIR: 'foreign' },
  ...{ ECONNREFUSED: 'unreachable', ECONNRESET: 'unreachable', ENOTFOUND: 'unreachable', EAI_AGAIN: 'unreachable' },
  ...{ ETIMEDOUT: 'unreachable', EHOSTUNREACH: 'unreachable', ENETUNREACH: 'unreachable', EPIPE: 'unreachable' },
  ...{ '28000': 'unreachable', '28P01': 'unreachable', '3D000': 'unreachable', '53300': 'unreachable' },
  ...{ '57P01': 'unreachable', '57P02': 'unreachable', '57P03': 'unreachable', '57014': 'unreachable' },
  ...{
    XX001: 'garbled',
    XX002: 'garbled',
    '58P01': 'garbled',
    '58030': 'garbled',
    '42P01': 'garbled',
    '42703': 'garbled',
  },
};

/**
 * The trouble behind an error of the file system, the network or the database.
 *
 * @param error - what was thrown
 * @param place - folder or database, as a person reads it, without a password
 * @returns a StoreError, or the error itself when it says nothing about the place
 */
export function asStoreError(error: unknown, place: string): unknown {
  if (error instanceof StoreError || !(error instanceof Error)) return error;
  const { code, message } = error as NodeJS.ErrnoException;
  const trouble = code === undefined ? connectionTrouble(message) : (CODES[code] ?? classOf(code));
  if (trouble === undefined) return error;
  return new StoreError(trouble, {
    place,
    why: message === '' ? (code ?? 'unknown') : message,
    found: 'something else',
  });
}

/** The driver gives no code when a connection ends or takes too long. */
function connectionTrouble(message: string): StoreTrouble | undefined {
  return /^Connection terminated|timeout exceeded when trying to connect|^Client has encountered a connection error|^Query read timeout/i.test(
    message,
  )
    ? 'unreachable'
    : undefined;
}

function classOf(code: string): StoreTrouble | undefined {
  return /^08\w{3}$/.test(code) ? 'unreachable' : undefined;
}

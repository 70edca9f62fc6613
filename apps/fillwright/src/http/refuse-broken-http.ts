import type { Socket } from 'node:net';
import { answerLine } from './answer-line.ts';

const STATUS: Readonly<Record<string, number>> = { ERR_HTTP_REQUEST_TIMEOUT: 408, HPE_HEADER_OVERFLOW: 431 };

/**
 * Answers what is no HTTP, too long in its head, or never finished: no request came to be, so this writes to the line.
 *
 * @param error - what the parser says
 * @param socket - the line
 */
export function refuseBrokenHttp(error: Error & { readonly code?: string }, socket: Socket): void {
  if (error.code === 'ECONNRESET' || socket.destroyed) return;
  answerLine(socket, STATUS[error.code ?? ''] ?? 400);
}

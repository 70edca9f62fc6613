import type { Socket } from 'node:net';
import { STATUS_CODES } from 'node:http';
import { PROBLEM_TYPE } from './send-problem.ts';
import { ProblemError } from './problem-error.ts';
import { problemOf } from './problem-of.ts';

const STATUS: Readonly<Record<string, number>> = { ERR_HTTP_REQUEST_TIMEOUT: 408, HPE_HEADER_OVERFLOW: 431 };

/**
 * Answers what is no HTTP, too long in its head, or never finished: no request came to be, so this writes to the line.
 *
 * @param error - what the parser says
 * @param socket - the line
 */
export function refuseBrokenHttp(error: Error & { readonly code?: string }, socket: Socket): void {
  if (error.code === 'ECONNRESET' || socket.destroyed) return;
  const status = STATUS[error.code ?? ''] ?? 400;
  const body = JSON.stringify({ ...problemOf(new ProblemError('unreadable-request')), status });
  const head = [
    `HTTP/1.1 ${status} ${STATUS_CODES[status] ?? ''}`,
    `Content-Type: ${PROBLEM_TYPE}`,
    `Content-Length: ${Buffer.byteLength(body)}`,
    'Connection: close',
  ];
  if (socket.writable) socket.end(`${head.join('\r\n')}\r\n\r\n${body}`);
  else socket.destroy();
}

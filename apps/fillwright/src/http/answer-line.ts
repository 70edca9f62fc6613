import { STATUS_CODES } from 'node:http';
import type { Duplex } from 'node:stream';
import { ProblemError } from './problem-error.ts';
import { problemOf } from './problem-of.ts';
import { PROBLEM_HEADERS } from './send-problem.ts';

/**
 * Answers on the line itself, where no request came to be, and closes it.
 *
 * @param line - the line
 * @param status - what stands in the head
 */
export function answerLine(line: Duplex, status: number): void {
  const body = JSON.stringify({ ...problemOf(new ProblemError('unreadable-request')), status });
  const headers = { ...PROBLEM_HEADERS, 'content-length': Buffer.byteLength(body), connection: 'close' };
  const head = Object.entries(headers).map(([name, value]) => `${name}: ${value}\r\n`);
  line.on('error', () => line.destroy());
  if (line.writable) line.end(`HTTP/1.1 ${status} ${STATUS_CODES[status] ?? ''}\r\n${head.join('')}\r\n${body}`);
  else line.destroy();
}

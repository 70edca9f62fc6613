import type { Server } from 'node:http';
import { answerLine } from './answer-line.ts';

/**
 * Answers what Node would otherwise answer without a word: an expectation that nobody can meet, and a tunnel.
 *
 * @param server - the server
 */
export function refuseOddHttp(server: Server): void {
  // RFC 9110, section 15.5.18: 417 Expectation Failed
  server.on('checkExpectation', ({ socket }) => {
    answerLine(socket, 417);
  });
  server.on('connect', (_request, line) => {
    answerLine(line, 400);
  });
}

import type { FastifyReply, FastifyRequest } from 'fastify';

const LONGEST_PATH = 200;

/**
 * One line of the log: what was asked, what was answered, how long it took. No query, no body, no name, no address.
 *
 * @param request - the request
 * @param reply - the reply that was sent
 * @returns for example `GET /api/health 200 1.3 ms`
 */
export function logLine(request: FastifyRequest, reply: FastifyReply): string {
  const path = (request.url.split('?', 1)[0] ?? '').slice(0, LONGEST_PATH);
  return `${request.method} ${path} ${reply.statusCode} ${reply.elapsedTime.toFixed(1)} ms`;
}

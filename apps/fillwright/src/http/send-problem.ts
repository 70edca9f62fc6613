import { problemSchema, type Problem } from '@fillwright/contract/problems';
import type { FastifyReply } from 'fastify';

export const PROBLEM_TYPE = 'application/problem+json';

/** Of every problem. Set here because what the framework itself refuses passes by every other place. */
export const PROBLEM_HEADERS = {
  'content-type': PROBLEM_TYPE,
  'cache-control': 'no-store',
  'content-security-policy': "default-src 'none'; frame-ancestors 'none'",
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
};

/**
 * Answers with a problem document.
 *
 * @param reply - the reply
 * @param problem - the problem
 * @returns the reply, sent
 */
export function sendProblem(reply: FastifyReply, problem: Problem): FastifyReply {
  return reply
    .code(problem.status)
    .headers(PROBLEM_HEADERS)
    .send(JSON.stringify(problemSchema.parse(problem)));
}

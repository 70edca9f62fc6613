import { problemSchema, type Problem } from '@fillwright/contract/problems';
import type { FastifyReply } from 'fastify';

export const PROBLEM_TYPE = 'application/problem+json';

/**
 * Answers with a problem document.
 *
 * @param reply - the reply
 * @param problem - the problem
 * @returns the reply, sent
 */
export function sendProblem(reply: FastifyReply, problem: Problem): FastifyReply {
  const text = JSON.stringify(problemSchema.parse(problem));
  return reply.code(problem.status).type(PROBLEM_TYPE).header('cache-control', 'no-store').send(text);
}

import { randomUUID } from 'node:crypto';
import { PROBLEM_STATUS, type Problem, type ProblemCode } from '@fillwright/contract/problems';
import { SERVER_PROBLEMS } from '@fillwright/words/en';
import { storeTrouble } from '../usecases/store-trouble.ts';
import { ProblemError, type ProblemMembers } from './problem-error.ts';

/** The framework's own refusals by their status; any other of the 400s is a request that cannot be read. */
const REFUSED: Readonly<Record<number, ProblemCode>> = {
  404: 'unknown-address',
  413: 'body-too-large',
  415: 'media-type',
  429: 'too-many-requests',
};
/** One sentence for every code: `satisfies` keeps the two lists the same. */
const WORDS = SERVER_PROBLEMS satisfies Readonly<Record<ProblemCode, { title: string; todo: string }>>;

/**
 * The problem document of whatever was thrown. What nobody foresaw gets an id and no text of its own.
 *
 * @param error - what was thrown
 * @returns the problem
 */
export function problemOf(error: unknown): Problem {
  if (error instanceof ProblemError) return problem(error.code, error.members);
  const id = { instance: `urn:uuid:${randomUUID()}` };
  const trouble = storeTrouble(error);
  if (trouble)
    return { ...problem('store-trouble', trouble.isForEverybody ? { detail: trouble.sentence } : {}), ...id };
  const status = refusalOf(error);
  if (status !== undefined) return problem(REFUSED[status] ?? 'unreadable-request');
  return { ...problem('internal-error'), ...id };
}

function problem(code: ProblemCode, members: ProblemMembers = {}): Problem {
  const { title, todo } = WORDS[code];
  return { type: `/problems/${code}`, title, status: PROBLEM_STATUS[code], detail: todo, ...members };
}

/** The status of an error of the framework that the client caused. */
function refusalOf(error: unknown): number | undefined {
  if (!(error instanceof Error) || !('statusCode' in error)) return undefined;
  const { statusCode } = error;
  return typeof statusCode === 'number' && statusCode >= 400 && statusCode < 500 ? statusCode : undefined;
}

import type { Problem, ProblemCode } from '@fillwright/contract/problems';
import { KEEPING_WORDS } from '@fillwright/words/en';
import type { ServerProblem } from './documents-client.ts';

const MOST_NAMED = 3;

/** @returns whether the server answered with this problem */
export function isProblem({ body }: ServerProblem, code: ProblemCode): boolean {
  return body['type'] === `/problems/${code}`;
}

/**
 * Why the server did not do it, in its own words.
 *
 * @param problem - what it answered
 * @returns one or two sentences
 */
export function problemWhy({ status, body }: ServerProblem): string {
  const { title, detail, errors } = body as Partial<Problem>;
  if (title === undefined) return KEEPING_WORDS.answered(status);
  const named = errors?.map((error) => error.detail.replace(/[.\s]*$/, '.')) ?? [];
  const more = named.length > MOST_NAMED ? [KEEPING_WORDS.more(named.length - MOST_NAMED)] : [];
  const said = [...named.slice(0, MOST_NAMED), ...more, ...(detail === undefined ? [] : [detail])].join(' ');
  return said === '' ? `${title}.` : `${title}: ${said}`;
}

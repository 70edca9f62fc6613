import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import { ServerProblem } from '../state/documents-client.ts';

/** @returns what went wrong with a call to the server, as one sentence */
export function problemText(error: unknown): string {
  if (error instanceof ServerProblem && error.status !== 0) {
    const { title, detail } = error.body;
    const said = typeof title === 'string' ? title : String(error.status);
    return BRIEF_PAGE_WORDS.problem.other(typeof detail === 'string' ? `${said} ${detail}` : said);
  }
  return BRIEF_PAGE_WORDS.problem.silent;
}

import { BRIEF_PAGE_WORDS, FILE_WORDS } from '@fillwright/words/en';
import { ServerProblem } from '../state/documents-client.ts';

/** @returns what went wrong with a call to the server, as one sentence */
export function problemText(error: unknown): string {
  const said = refusalIn(error);
  return said === undefined ? BRIEF_PAGE_WORDS.problem.silent : BRIEF_PAGE_WORDS.problem.other(said);
}

/** @returns why a file was not kept, as one sentence */
export function keepingProblem(error: unknown): string {
  const said = refusalIn(error);
  return said === undefined ? FILE_WORDS.silent : FILE_WORDS.refused(said);
}

/** What the server said; undefined when it did not answer. */
function refusalIn(error: unknown): string | undefined {
  if (!(error instanceof ServerProblem) || error.status === 0) return undefined;
  const { title, detail } = error.body;
  const said = typeof title === 'string' ? title : String(error.status);
  return typeof detail === 'string' ? `${said} ${detail}` : said;
}

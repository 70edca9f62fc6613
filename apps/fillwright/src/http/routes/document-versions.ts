import { versionHeadSchema } from '@fillwright/contract/documents';
import { z } from 'zod';
import { documentHistory } from '../../usecases/document-history.ts';
import type { App } from '../app.ts';
import type { AppParts } from '../app-parts.ts';
import { PROBLEM_ANSWERS } from '../problem-answers.ts';
import { ProblemError } from '../problem-error.ts';
import { documentParameters } from './document-parameters.ts';

/** `GET /api/documents/:kind/:id/versions`: every version of a document, without its text. */
export function documentVersionsRoute(api: App, { store }: AppParts): void {
  const schema = {
    summary: 'Every version of a document, without its text',
    params: documentParameters,
    response: { 200: z.array(versionHeadSchema), ...PROBLEM_ANSWERS },
  };
  api.get('/documents/:kind/:id/versions', { schema }, async ({ params }) => {
    const found = await documentHistory(store, params);
    if (found.length === 0) throw new ProblemError('unknown-document');
    return [...found];
  });
}

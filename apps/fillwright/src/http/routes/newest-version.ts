import { versionSchema } from '@fillwright/contract/documents';
import { newestVersion } from '../../usecases/newest-version.ts';
import type { App } from '../app.ts';
import type { AppParts } from '../app-parts.ts';
import { PROBLEM_ANSWERS } from '../problem-answers.ts';
import { ProblemError } from '../problem-error.ts';
import { documentParameters } from './document-parameters.ts';

/** `GET /api/documents/:kind/:id`: the newest version of a document. */
export function newestVersionRoute(api: App, { store }: AppParts): void {
  const schema = {
    summary: 'The newest version of a document',
    params: documentParameters,
    response: { 200: versionSchema, ...PROBLEM_ANSWERS },
  };
  api.get('/documents/:kind/:id', { schema }, async ({ params }) => {
    const found = await newestVersion(store, params);
    if (!found) throw new ProblemError('unknown-document');
    return found;
  });
}

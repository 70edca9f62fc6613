import { versionSchema } from '@fillwright/contract/documents';
import { readVersion } from '../../usecases/read-version.ts';
import type { App } from '../app.ts';
import type { AppParts } from '../app-parts.ts';
import { PROBLEM_ANSWERS } from '../problem-answers.ts';
import { ProblemError } from '../problem-error.ts';
import { versionParameters } from './document-parameters.ts';

/** `GET /api/documents/:kind/:id/versions/:version`: one version of a document. */
export function oneVersionRoute(api: App, { store }: AppParts): void {
  const schema = {
    summary: 'One version of a document',
    params: versionParameters,
    response: { 200: versionSchema, ...PROBLEM_ANSWERS },
  };
  api.get('/documents/:kind/:id/versions/:version', { schema }, async ({ params: { version, ...name } }) => {
    const found = await readVersion(store, name, version);
    if (!found) throw new ProblemError('unknown-document');
    return found;
  });
}

import { versionHeadSchema } from '@fillwright/contract/documents';
import { z } from 'zod';
import { listDocuments } from '../../usecases/list-documents.ts';
import type { App } from '../app.ts';
import type { AppParts } from '../app-parts.ts';
import { PROBLEM_ANSWERS } from '../problem-answers.ts';
import { kindParameters } from './document-parameters.ts';

/** `GET /api/documents/:kind`: the newest version of every document of a kind, without its text. */
export function listDocumentsRoute(api: App, { store }: AppParts): void {
  const schema = {
    summary: 'The newest version of every document of a kind, without its text',
    params: kindParameters,
    response: { 200: z.array(versionHeadSchema), ...PROBLEM_ANSWERS },
  };
  api.get('/documents/:kind', { schema }, async ({ params }) => [...(await listDocuments(store, params.kind))]);
}

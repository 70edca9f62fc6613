import { newVersionSchema, versionSchema } from '@fillwright/contract/documents';
import { SAVE_WORDS } from '@fillwright/words/en';
import { saveVersion } from '../../usecases/save-version.ts';
import type { App } from '../app.ts';
import type { AppParts } from '../app-parts.ts';
import { PROBLEM_ANSWERS } from '../problem-answers.ts';
import { ProblemError } from '../problem-error.ts';
import { documentParameters } from './document-parameters.ts';

/** `POST /api/documents/:kind/:id/versions`: keeps a new version, unless somebody kept one since the version it was based on. */
export function saveVersionRoute(api: App, { store, now }: AppParts): void {
  const schema = {
    summary: 'Keeps a new version, unless somebody kept one since the version it was based on',
    params: documentParameters,
    body: newVersionSchema,
    response: { 201: versionSchema, ...PROBLEM_ANSWERS },
  };
  api.post('/documents/:kind/:id/versions', { schema }, async ({ params, body }, reply) => {
    const saved = await saveVersion(store, params, { ...body, at: now().toISOString() });
    switch (saved.outcome) {
      case 'kept':
        return reply.code(201).send(saved.version);
      case 'newer':
        throw new ProblemError('newer-version', { current: saved.current, yours: body.text });
      case 'reason-missing':
        throw new ProblemError('reason-missing', {
          errors: [{ pointer: '#/reason', detail: SAVE_WORDS.reasonMissing }],
        });
      case 'not-in-order':
        throw new ProblemError('not-in-order', {
          errors: saved.sentences.map((detail) => ({ pointer: '#/text', detail })),
        });
    }
  });
}

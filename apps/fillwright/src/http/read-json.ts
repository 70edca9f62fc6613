import type { FastifyRequest } from 'fastify';
import type { App } from './app.ts';
import { ProblemError } from './problem-error.ts';

/**
 * Reads bodies of JSON. The framework itself would put a mark for every byte that is no UTF-8, and the document would be
 * kept changed: here such a body is refused.
 *
 * @param app - the server
 */
export function readJson(app: App): void {
  const parse = app.getDefaultJsonParser('error', 'error');
  const utf8 = new TextDecoder('utf-8', { fatal: true });
  app.removeContentTypeParser('application/json');
  app.addContentTypeParser('application/json', { parseAs: 'buffer' }, (request: FastifyRequest, body: Buffer, done) => {
    let text: string;
    try {
      text = utf8.decode(body);
    } catch {
      done(new ProblemError('unreadable-request'), undefined);
      return;
    }
    void parse(request, text, done);
  });
}

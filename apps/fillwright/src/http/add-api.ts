import rateLimit from '@fastify/rate-limit';
import swagger from '@fastify/swagger';
import { jsonSchemaTransform } from 'fastify-type-provider-zod';
import type { App } from './app.ts';
import type { AppParts } from './app-parts.ts';
import { onlyUsedSchemas } from './only-used-schemas.ts';
import { ProblemError } from './problem-error.ts';
import { documentVersionsRoute } from './routes/document-versions.ts';
import { exampleTextRoute } from './routes/example-text.ts';
import { healthRoute } from './routes/health.ts';
import { listDocumentsRoute } from './routes/list-documents.ts';
import { listExamplesRoute } from './routes/list-examples.ts';
import { newestVersionRoute } from './routes/newest-version.ts';
import { oneVersionRoute } from './routes/one-version.ts';
import { openApiRoute } from './routes/open-api.ts';
import { saveVersionRoute } from './routes/save-version.ts';

const ROUTES = [
  healthRoute,
  listDocumentsRoute,
  newestVersionRoute,
  documentVersionsRoute,
  oneVersionRoute,
  saveVersionRoute,
  listExamplesRoute,
  exampleTextRoute,
  openApiRoute,
];

/**
 * Adds the interface: every route under `/api`, described by its own schemas.
 *
 * @param app - the server
 * @param parts - what it stands on
 */
export async function addApi(app: App, parts: AppParts): Promise<void> {
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: { title: 'Fillwright', version: parts.version, license: { name: 'Apache-2.0', identifier: 'Apache-2.0' } },
    },
    transform: jsonSchemaTransform,
    transformObject: onlyUsedSchemas,
  });
  await app.register(
    async (api: App) => {
      await api.register(rateLimit, {
        max: parts.mostRequests_per_min,
        timeWindow: 60_000,
        errorResponseBuilder: () => new ProblemError('too-many-requests'),
      });
      api.addHook('onSend', async (_request, reply) => void reply.header('cache-control', 'no-store'));
      api.setNotFoundHandler({ preHandler: api.rateLimit() }, () => {
        throw new ProblemError('unknown-address');
      });
      for (const add of ROUTES) add(api, parts);
    },
    { prefix: '/api' },
  );
}

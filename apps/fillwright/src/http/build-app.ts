import helmet from '@fastify/helmet';
import Fastify, { type FastifyReply, type FastifyRequest } from 'fastify';
import { serializerCompiler, type ZodTypeProvider } from 'fastify-type-provider-zod';
import { addApi } from './add-api.ts';
import type { AppParts } from './app-parts.ts';
import type { App } from './app.ts';
import { inputCompiler } from './input-compiler.ts';
import { logLine } from './log-line.ts';
import { problemOf } from './problem-of.ts';
import { readJson } from './read-json.ts';
import { refuseBrokenHttp } from './refuse-broken-http.ts';
import { refuseForeign } from './refuse-foreign.ts';
import { refuseOddHttp } from './refuse-odd-http.ts';
import { SECURITY_HEADERS } from './security-headers.ts';
import { sendProblem } from './send-problem.ts';
import { addWebApp } from './add-web-app.ts';

/** Longest body: the longest text of a version, with what JSON adds to it. */
const LONGEST_BODY_bytes = 300 * 1024;
/** Longest wait for a whole request. */
const PATIENCE_ms = 30_000;

/**
 * The server: interface under `/api/`, pages under everything else. It listens nowhere yet.
 *
 * @param parts - what it stands on
 * @returns the server, ready
 */
export async function buildApp(parts: AppParts): Promise<App> {
  const fail = (error: unknown, reply: FastifyReply): FastifyReply => {
    const problem = problemOf(error);
    if (problem.instance !== undefined) parts.onUnforeseen(problem.instance, error);
    return sendProblem(reply, problem);
  };
  const app: App = Fastify({
    logger: false,
    bodyLimit: LONGEST_BODY_bytes,
    requestTimeout: PATIENCE_ms,
    // While it closes, what is under way is still answered in full.
    return503OnClosing: false,
    // Only something on this very machine may stand in front and tell for whom it asks.
    trustProxy: 'loopback',
    // A request without a host gets the same answer as one with a wrong host.
    http: { requireHostHeader: false },
    clientErrorHandler: refuseBrokenHttp,
    frameworkErrors: (error, _request, reply) => void fail(error, reply as FastifyReply),
  }).withTypeProvider<ZodTypeProvider>();
  refuseOddHttp(app.server);
  app.removeContentTypeParser('text/plain');
  readJson(app);
  app.setValidatorCompiler(inputCompiler);
  app.setSerializerCompiler(serializerCompiler);
  app.setErrorHandler((error, _request, reply) => fail(error, reply));
  app.addHook('onRequest', refuseForeign(parts.names));
  app.addHook('onResponse', async (request: FastifyRequest, reply: FastifyReply) =>
    parts.onRequest?.(logLine(request, reply)),
  );
  await app.register(helmet, SECURITY_HEADERS);
  await addApi(app, parts);
  await addWebApp(app, parts.webFolder);
  await app.ready();
  return app;
}

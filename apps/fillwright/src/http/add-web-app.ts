import { existsSync } from 'node:fs';
import { join } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { App } from './app.ts';
import { ProblemError } from './problem-error.ts';

const PAGE = 'index.html';
/** What the interface does not have is no page either, however it is spelt. */
const OF_INTERFACE = /^\/+api(\/|$)/i;
/** Files that the build names by their content never change. */
const NAMED_BY_CONTENT = /[/\\]assets[/\\][^/\\]+$/;

/**
 * Adds the pages: the built files, packed where the browser takes that, and `index.html` for every address that a page may have.
 *
 * @param app - the server
 * @param folder - the built pages; they may be missing
 */
export async function addWebApp(app: App, folder: string): Promise<void> {
  const isBuilt = existsSync(join(folder, PAGE));
  if (isBuilt)
    await app.register(fastifyStatic, {
      root: folder,
      index: PAGE,
      dotfiles: 'ignore',
      cacheControl: false,
      preCompressed: true,
      setHeaders: (reply, path) => {
        reply.setHeader(
          'cache-control',
          NAMED_BY_CONTENT.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache',
        );
        reply.setHeader('vary', 'accept-encoding');
      },
    });
  app.setNotFoundHandler((request, reply) => {
    const [path = ''] = request.url.split('?', 1);
    const isRead = request.method === 'GET' || request.method === 'HEAD';
    const isPage = isRead && !OF_INTERFACE.test(path) && !/\.[^/]*$/.test(path);
    if (!isPage) throw new ProblemError('unknown-address');
    if (!isBuilt) throw new ProblemError('app-not-built');
    return reply.sendFile(PAGE);
  });
}

import { fileURLToPath } from 'node:url';
import { SERVE_WORDS, USAGE } from '@fillwright/words/en';
import type { App } from '../http/app.ts';
import type { buildApp } from '../http/build-app.ts';
import { refuse } from '../refuse.ts';
import { serveSettings, type ServeSettings } from '../serve-settings.ts';
import type { Streams } from '../streams.ts';
import { untilSignal } from '../until-signal.ts';
import { addDemo } from '../usecases/add-demo.ts';
import { openDocuments, type Store } from '../usecases/open-documents.ts';
import { storeTrouble } from '../usecases/store-trouble.ts';
import { version } from '../version.ts';

const PAGES = fileURLToPath(new URL('../../../web/dist/', import.meta.url));
/** Generous for one person: a page that is typed in keeps a version a second. */
const MOST_REQUESTS_per_min = 600;
/** Longest wait at the end for what is under way. */
const PATIENCE_TO_END_ms = 5000;

const now = (): Date => new Date();

/**
 * `fillwright serve`: pages, interface and store in this process until a signal ends it.
 *
 * @param args - flags
 * @param streams - where to write
 * @returns exit code: 0 after a signal, 2 for wrong input, 3 when store or port cannot be used
 */
export async function run(args: readonly string[], streams: Streams): Promise<number> {
  const settings = serveSettings(args, process.env);
  if (settings === 'help') {
    streams.out(USAGE.serve);
    return 0;
  }
  if ('wrong' in settings) return refuse(streams, ...settings.wrong);
  const signal = untilSignal();
  // Loaded while the thread of the store starts: either takes about half a second.
  const loading = import('../http/build-app.ts');
  let store: Store | undefined;
  try {
    store = await openDocuments(process.env, true);
    if (settings.isDemo && (await addDemo(store, now().toISOString()))) streams.out(SERVE_WORDS.demoAdded);
    return await serve({ settings, streams, store, signal, build: (await loading).buildApp });
  } catch (error) {
    const trouble = storeTrouble(error);
    if (trouble === undefined) throw error;
    streams.problem(trouble.sentence);
    return 3;
  } finally {
    await store?.close();
  }
}

interface Serving {
  readonly settings: ServeSettings;
  readonly streams: Streams;
  readonly store: Store;
  readonly signal: Promise<void>;
  readonly build: typeof buildApp;
}

async function serve({ settings, streams, store, signal, build }: Serving): Promise<number> {
  const app = await build({
    store,
    now,
    version: version(),
    names: settings.names,
    mostRequests_per_min: MOST_REQUESTS_per_min,
    webFolder: PAGES,
    ...(settings.isLogged ? { onRequest: streams.out } : {}),
    onUnforeseen: (id, error) => {
      streams.problem(unforeseen(id, error));
    },
  });
  const url = await listening(app, { settings, streams });
  if (url !== undefined) {
    streams.out(SERVE_WORDS.ready(url));
    await signal;
  }
  // Half a request that never goes on would keep it for ever.
  const atTheLatest = setTimeout(() => {
    app.server.closeAllConnections();
  }, PATIENCE_TO_END_ms);
  await app.close();
  clearTimeout(atTheLatest);
  return url === undefined ? 3 : 0;
}

async function listening(
  app: App,
  { settings: { host, port }, streams }: Pick<Serving, 'settings' | 'streams'>,
): Promise<string | undefined> {
  try {
    await app.listen({ host, port });
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    streams.problem(whyNot({ code, message, host, port }));
    return undefined;
  }
  const address = app.server.address();
  const name = host === '0.0.0.0' || host === '::' ? 'localhost' : host.includes(':') ? `[${host}]` : host;
  return `http://${name}:${typeof address === 'object' && address !== null ? address.port : port}/`;
}

function whyNot({ code, message, host, port }: { code: string; message: string; host: string; port: number }): string {
  switch (code) {
    case 'EADDRINUSE':
      return SERVE_WORDS.portInUse(port);
    case 'EACCES':
      return SERVE_WORDS.portNotAllowed(port);
    case 'EADDRNOTAVAIL':
    case 'ENOTFOUND':
    case 'EAI_AGAIN':
      return SERVE_WORDS.noSuchAddress(host);
    default:
      return SERVE_WORDS.notListening(message);
  }
}

/** What the log says: never more than the error itself says, and where it came from only when that is asked for. */
function unforeseen(id: string, error: unknown): string {
  const why = storeTrouble(error)?.sentence ?? (error instanceof Error ? error.message : String(error));
  const where = process.env['FILLWRIGHT_DEBUG'] === '1' && error instanceof Error ? `\n${error.stack ?? ''}` : '';
  return SERVE_WORDS.internalError(id, why) + where;
}

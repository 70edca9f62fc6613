import { isIP } from 'node:net';
import type { FastifyRequest } from 'fastify';
import { ProblemError } from './problem-error.ts';

/**
 * Refuses what a page of another site sends. A page can bind its own name to this machine's address, so the name that a
 * request uses must be one of ours (an address is: no page can take one over); and what changes something must not come
 * from a page of another origin.
 *
 * @param names - names under which the server is reached besides `localhost`
 * @returns the check of one request
 */
export function refuseForeign(names: readonly string[]): (request: FastifyRequest) => Promise<void> {
  const ours = new Set(['localhost', ...names.map((name) => name.toLowerCase())]);
  return ({ headers, method, raw }) => {
    const host = hostOf(headers.host ?? '', raw.rawHeaders);
    if (host === undefined || !(ours.has(host.name) || isIP(host.name) !== 0))
      return Promise.reject(new ProblemError('foreign-host'));
    const isReading = method === 'GET' || method === 'HEAD';
    const { origin } = headers;
    if (isReading || origin === undefined || partsOf(origin)?.host === host.host) return Promise.resolve();
    return Promise.reject(new ProblemError('foreign-origin'));
  };
}

/** RFC 9112, section 3.2: one `Host` field, and in it nothing but name and port. */
function hostOf(host: string, rawHeaders: readonly string[]): ReturnType<typeof partsOf> {
  const hostCount = rawHeaders.filter((name, i) => i % 2 === 0 && name.toLowerCase() === 'host').length;
  return hostCount > 1 || /[/\\@?#]/.test(host) ? undefined : partsOf(`http://${host}`);
}

/** Name, and name with port as it stands in a `Host` field: a port that is usual for the scheme is left out of an origin. */
function partsOf(url: string): { readonly name: string; readonly host: string } | undefined {
  if (!URL.canParse(url)) return undefined;
  const { hostname, host } = new URL(url);
  return hostname === '' ? undefined : { name: hostname.replace(/^\[|\]$/g, ''), host };
}

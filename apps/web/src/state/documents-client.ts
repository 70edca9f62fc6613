import type { DocumentKind, DocumentVersion, DocumentVersionHead, NewVersion } from '@fillwright/contract/documents';

/** A problem document of the server (RFC 9457), or what is known when no server answered. */
export class ServerProblem extends Error {
  /** HTTP status; 0 when the server did not answer. */
  readonly status: number;
  readonly body: Readonly<Record<string, unknown>>;
  constructor(status: number, body: Readonly<Record<string, unknown>>) {
    super(typeof body['title'] === 'string' ? body['title'] : String(status));
    this.status = status;
    this.body = body;
  }
}

/** What became of a version that was sent. */
export type Saved =
  | { readonly kind: 'kept'; readonly version: DocumentVersion }
  | { readonly kind: 'conflict'; readonly current: DocumentVersion };

/** Longer than the server itself takes to say that its store does not answer. */
const PATIENCE_ms = 45_000;

export interface Example {
  readonly kind: 'brief' | 'filler';
  readonly name: string;
  readonly title: string;
}

export const listDocuments = (kind: DocumentKind): Promise<readonly DocumentVersionHead[]> => get(`documents/${kind}`);

export const newestVersion = (kind: DocumentKind, id: string): Promise<DocumentVersion> =>
  get(`documents/${kind}/${id}`);

export const versionsOf = (kind: DocumentKind, id: string): Promise<readonly DocumentVersionHead[]> =>
  get(`documents/${kind}/${id}/versions`);

export const oneVersion = (kind: DocumentKind, id: string, version: number): Promise<DocumentVersion> =>
  get(`documents/${kind}/${id}/versions/${version}`);

/** The examples of a kind. @throws ServerProblem */
export async function listExamples(kind: Example['kind']): Promise<readonly Example[]> {
  return (await get<readonly Example[]>('examples')).filter((example) => example.kind === kind);
}

/** Text of an example file. @throws ServerProblem */
export async function exampleText(name: string): Promise<string> {
  return (await call(`examples/${encodeURIComponent(name)}`)).text();
}

/**
 * Sends a version.
 *
 * @param document - kind and id
 * @param version - text, and the version it was based on
 * @returns the version kept, or the newer one that somebody else saved
 * @throws ServerProblem - everything else; status 0 when the server does not answer
 */
export async function saveVersion(
  { kind, id }: { readonly kind: DocumentKind; readonly id: string },
  version: NewVersion,
): Promise<Saved> {
  try {
    const answer = await call(`documents/${kind}/${id}/versions`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(version),
      signal: AbortSignal.timeout(PATIENCE_ms),
    });
    return { kind: 'kept', version: (await answer.json()) as DocumentVersion };
  } catch (error) {
    if (error instanceof ServerProblem && error.status === 409)
      return { kind: 'conflict', current: error.body['current'] as DocumentVersion };
    throw error;
  }
}

async function get<Result>(path: string): Promise<Result> {
  return (await (await call(path)).json()) as Result;
}

async function call(path: string, options: RequestInit = {}): Promise<Response> {
  let answer: Response;
  try {
    answer = await fetch(`/api/${path}`, options);
  } catch {
    throw new ServerProblem(0, {});
  }
  if (answer.ok) return answer;
  throw new ServerProblem(answer.status, await problemIn(answer));
}

async function problemIn(answer: Response): Promise<Readonly<Record<string, unknown>>> {
  try {
    return (await answer.json()) as Record<string, unknown>;
  } catch {
    return {};
  }
}

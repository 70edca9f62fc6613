import type { DocumentKind, DocumentVersion, NewVersion } from '@fillwright/contract/documents';
import { saveVersion, ServerProblem } from './documents-client.ts';
import { personName } from './person.ts';

const IDLE_ms = 1000;
const RETRY_ms = 3000;

/** What a document's keeper tells the workbench. */
export type KeeperNews =
  | { readonly kind: 'pending' | 'saving' | 'offline'; readonly version: number }
  | { readonly kind: 'kept'; readonly version: number; readonly text: string }
  | { readonly kind: 'conflict'; readonly current: DocumentVersion; readonly yours: string };

interface KeptDocument {
  readonly kind: DocumentKind;
  readonly id: string;
  /** Newest version known; 0: none yet. */
  readonly version: number;
  readonly text: string;
}

/** What became of a version that was sent. */
export type Sent = 'kept' | 'offline' | 'conflict' | 'reason-needed' | 'refused';

/** Keeps one document on the server: drafts after a second of rest, saved versions on request, one after the other. */
export class Keeper {
  readonly #document: Pick<KeptDocument, 'kind' | 'id'>;
  readonly #tell: (news: KeeperNews) => void;
  #version: number;
  #text: string;
  /** Text that the server has; undefined when it must be sent again. */
  #kept: string | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #lane: Promise<unknown> = Promise.resolve();

  constructor(document: KeptDocument, tell: (news: KeeperNews) => void) {
    const { kind, id, version, text } = document;
    this.#document = { kind, id };
    this.#tell = tell;
    this.#version = version;
    this.#text = text;
    this.#kept = version === 0 ? undefined : text;
  }

  /** Version that the next one is based on. */
  get version(): number {
    return this.#version;
  }

  /** The text changed; a draft follows after a second of rest. */
  touch(text: string): void {
    this.#text = text;
    if (text === this.#kept) return;
    this.#tell({ kind: 'pending', version: this.#version });
    this.#later(IDLE_ms);
  }

  /** Sends at once; `saved` may carry a reason. */
  send(status: NewVersion['status'], reason?: string): Promise<Sent> {
    this.stop();
    const mine = this.#lane.then(() => this.#send(status, reason));
    this.#lane = mine.catch(() => undefined);
    return mine;
  }

  /** After a conflict: goes on from this version. */
  baseOn(version: number): void {
    this.#version = version;
    this.#kept = undefined;
  }

  stop(): void {
    clearTimeout(this.#timer);
  }

  #later(delay_ms: number): void {
    this.stop();
    this.#timer = setTimeout(() => void this.send('draft'), delay_ms);
  }

  async #send(status: NewVersion['status'], reason: string | undefined): Promise<Sent> {
    const text = this.#text;
    if (status === 'draft' && text === this.#kept) return 'kept';
    this.#tell({ kind: 'saving', version: this.#version });
    const why = reason === undefined ? {} : { reason };
    try {
      const saved = await saveVersion(this.#document, {
        basedOn: this.#version,
        status,
        text,
        by: personName(),
        ...why,
      });
      return saved.kind === 'kept' ? this.#keep(saved.version.version, text) : this.#clash(saved.current, text);
    } catch (error) {
      return this.#miss(error);
    }
  }

  #keep(version: number, text: string): Sent {
    this.#version = version;
    this.#kept = text;
    this.#tell({ kind: 'kept', version, text });
    if (this.#text !== text) this.#later(IDLE_ms);
    return 'kept';
  }

  #clash(current: DocumentVersion, yours: string): Sent {
    this.#tell({ kind: 'conflict', current, yours });
    return 'conflict';
  }

  #miss(error: unknown): Sent {
    const { status, body } = error instanceof ServerProblem ? error : new ServerProblem(0, {});
    const isRefused = status >= 400 && status < 500 && status !== 429;
    this.#tell({ kind: isRefused ? 'pending' : 'offline', version: this.#version });
    if (!isRefused) {
      this.#later(RETRY_ms);
      return 'offline';
    }
    return String(body['type']).endsWith('/reason-needed') ? 'reason-needed' : 'refused';
  }
}

import type { DocumentVersion, NewVersion } from '@fillwright/contract/documents';
import { saveVersion, ServerProblem } from './documents-client.ts';
import type { DocumentName } from './kept-texts.ts';
import { personName } from './person.ts';
import { isProblem, problemWhy } from './problem-why.ts';
import type { SaveOutcome, SaveState } from './workbench-state.ts';

const IDLE_ms = 1000;
const RETRY_ms = 3000;
/** Texts remembered as sent and not answered. */
const MOST_SENT = 8;
const TOO_MANY = 429;

/** What a keeper tells: how its text stands; `newer`: this tab has nothing unsent, and there is a newer version. */
export type KeeperNews = SaveState | { readonly kind: 'newer'; readonly current: DocumentVersion };

/** Where a keeper begins. */
export interface Beginning {
  /** Version that the text is based on; 0: none yet. */
  readonly version: number;
  readonly text: string;
  /** The version that holds this very text; left out when the server does not have it. */
  readonly kept?: Pick<DocumentVersion, 'text' | 'status'>;
  /** Texts sent on top of that version that nobody answered. */
  readonly sent: readonly string[];
  /** Whether two texts say the same; they need not be equal to the letter. */
  readonly isSame: (one: string, other: string) => boolean;
}

/** Keeps one document on the server: drafts after a second of rest, saved versions on request, one after the other. */
export class Keeper {
  readonly #name: DocumentName;
  readonly #tell: (news: KeeperNews) => void;
  readonly #isSame: Beginning['isSame'];
  #version: number;
  #text: string;
  #kept: Beginning['kept'];
  #sent: readonly string[];
  #clash: DocumentVersion | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #lane: Promise<unknown> = Promise.resolve();
  #underWayCount = 0;
  #isClosed = false;

  constructor(name: DocumentName, beginning: Beginning, tell: (news: KeeperNews) => void) {
    this.#name = name;
    this.#tell = tell;
    this.#isSame = beginning.isSame;
    this.#version = beginning.version;
    this.#text = beginning.text;
    this.#kept = beginning.kept;
    this.#sent = beginning.sent;
  }

  /** Version that the next one is based on. */
  get version(): number {
    return this.#version;
  }

  get sent(): readonly string[] {
    return this.#sent;
  }

  /** Whether the server has the text and no answer is awaited. */
  get isAtRest(): boolean {
    return this.#underWayCount === 0 && this.#hasText();
  }

  /** Whether an answer is awaited. */
  get isBusy(): boolean {
    return this.#underWayCount > 0;
  }

  /** The text changed; a draft follows after a second of rest. */
  touch(text: string): void {
    this.#text = text;
    if (this.#clash) this.#tell({ kind: 'conflict', current: this.#clash, yours: text });
    else this.#rest();
  }

  /** Sends at once; `saved` may carry a reason. */
  send(status: NewVersion['status'], reason?: string): Promise<SaveOutcome> {
    this.#stop();
    this.#underWayCount++;
    const mine = this.#lane.then(() => this.#send(status, reason)).finally(() => this.#underWayCount--);
    this.#lane = mine.catch(() => undefined);
    return mine.then((outcome) => {
      // What was typed meanwhile, or not taken as a saved version, still becomes a draft.
      const isOpen = outcome.kind === 'kept' ? !this.#hasText() : status === 'saved';
      if (isOpen && ['kept', 'refused', 'reason-needed'].includes(outcome.kind)) this.#rest();
      return outcome;
    });
  }

  /** There is this version on the server: the same as ours, one to take over, or one to choose against. */
  meet(newest: DocumentVersion): void {
    if (this.#isSame(newest.text, this.#text)) this.#go(newest);
    else if (newest.version === this.#version) return;
    else if (this.isAtRest) this.#tell({ kind: 'newer', current: newest });
    else if (this.#isOurs(newest)) {
      this.#go(newest);
      this.#rest();
    } else this.#dispute(newest);
  }

  /** Goes on from this version with its text. */
  adopt(version: DocumentVersion): void {
    this.#text = version.text;
    this.#go(version);
  }

  /** After a conflict: this text is the next version on top of the newer one. */
  insist(): void {
    if (!this.#clash) return;
    this.#version = this.#clash.version;
    this.#kept = undefined;
    this.#sent = [];
    this.#clash = undefined;
    this.#rest();
  }

  /** Sends what is not sent, once more and never again. */
  close(): void {
    this.#isClosed = true;
    if (!this.#hasText() && !this.#clash) void this.send('draft');
    else this.#stop();
  }

  #hasText(): boolean {
    return this.#kept !== undefined && this.#isSame(this.#kept.text, this.#text);
  }

  /** Says how the text stands; a draft of it follows if the server does not have it. */
  #rest(): void {
    if (this.isAtRest) {
      this.#stop();
      this.#tell({ kind: 'kept', version: this.#version });
      return;
    }
    this.#tell({ kind: 'pending', version: this.#version });
    this.#later(IDLE_ms);
  }

  #stop(): void {
    clearTimeout(this.#timer);
  }

  #later(delay_ms: number): void {
    this.#stop();
    if (!this.#isClosed) this.#timer = setTimeout(() => void this.send('draft'), delay_ms);
  }

  async #send(status: NewVersion['status'], reason: string | undefined): Promise<SaveOutcome> {
    const text = this.#text;
    if (this.#clash) return { kind: 'conflict' };
    if (status === 'draft' ? this.#hasText() : this.#kept?.text === text && this.#kept.status === 'saved') {
      this.#tell({ kind: 'kept', version: this.#version });
      return { kind: 'kept' };
    }
    if (!this.#sent.includes(text)) this.#sent = [...this.#sent.slice(0, MOST_SENT - 1), text];
    this.#tell({ kind: 'saving', version: this.#version });
    const why = reason === undefined ? {} : { reason };
    const version = { basedOn: this.#version, status, text, by: personName(), ...why };
    try {
      const saved = await saveVersion(this.#name, version);
      if (saved.kind === 'kept') {
        this.#go(saved.version);
        return { kind: 'kept' };
      }
      if (!this.#isOurs(saved.current)) return this.#dispute(saved.current);
      this.#go(saved.current);
      return await this.#send(status, reason);
    } catch (error) {
      return this.#miss(error, status);
    }
  }

  /** Another text than ours is the newest: a person has to choose. */
  #dispute(current: DocumentVersion): SaveOutcome {
    this.#stop();
    this.#clash = current;
    this.#tell({ kind: 'conflict', current, yours: this.#text });
    return { kind: 'conflict' };
  }

  /** Whether a newer version is what we sent, or say the same: then only an answer was lost. */
  #isOurs({ version, text }: DocumentVersion): boolean {
    return version !== this.#version && (this.#isSame(text, this.#text) || this.#sent.includes(text));
  }

  #go({ version, text, status }: DocumentVersion): void {
    this.#version = version;
    this.#kept = { text, status };
    this.#sent = [];
    this.#clash = undefined;
    this.#tell({ kind: this.#hasText() ? 'kept' : 'pending', version });
  }

  #miss(error: unknown, status: NewVersion['status']): SaveOutcome {
    const problem = error instanceof ServerProblem ? error : new ServerProblem(0, {});
    const version = this.#version;
    if (isProblem(problem, 'reason-missing')) return { kind: 'reason-needed' };
    const why = problemWhy(problem);
    const isForLater = problem.status === 0 || problem.status >= 500 || problem.status === TOO_MANY;
    if (!isForLater) {
      if (status === 'draft') this.#tell({ kind: 'refused', version, why });
      return { kind: 'refused', why };
    }
    const isSilent = problem.status !== TOO_MANY && problem.body['title'] === undefined;
    this.#later(RETRY_ms);
    this.#tell(isSilent ? { kind: 'offline', version } : { kind: 'trouble', version, why });
    return isSilent ? { kind: 'offline' } : { kind: 'trouble', why };
  }
}

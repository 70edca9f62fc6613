import type { DocumentVersion, FileDocument } from '@fillwright/contract/documents';
import { emitter } from './emitter.ts';
import { Keeper, type KeeperNews, type Sent } from './keeper.ts';
import { forgetText, keepText, keptText } from './kept-text.ts';
import { keptVersion } from './named-file.ts';
import type { SaveState } from './workbench-state.ts';

/** What is known of the file that is open. */
export interface FileState {
  /** `asking`: the server has not answered yet; `none`: nothing is kept under this name. */
  readonly kind: 'asking' | 'none' | 'there';
  readonly text: string;
  readonly save: SaveState;
}

const ASKING: FileState = { kind: 'asking', text: '', save: { kind: 'kept', version: 0 } };

/** The desk on which one filler or shell is changed: drafts follow by themselves, saved versions on request. */
export class FileDesk {
  readonly #document: FileDocument;
  readonly #store = emitter<FileState>(ASKING);
  #keeper: Keeper | undefined;

  readonly state = this.#store.get;
  readonly subscribe = this.#store.subscribe;

  constructor(document: FileDocument) {
    this.#document = document;
  }

  /** Name under which a text that is not sent yet is kept in this browser. */
  get #mark(): string {
    return `${this.#document.kind}.${this.#document.id}`;
  }

  /** Looks up what is kept, on the server and in this browser. @throws ServerProblem when neither can say */
  async open(): Promise<void> {
    const mine = keptText(this.#mark);
    const newest = await keptVersion(this.#document).catch((error: unknown) => {
      if (mine) return undefined;
      throw error;
    });
    if (!newest && !mine) {
      this.#set({ kind: 'none' });
      return;
    }
    this.#begin(newest, mine ?? { text: newest?.text ?? '', basedOn: newest?.version ?? 0 });
  }

  readonly setText = (text: string): void => {
    if (text === this.state().text) return;
    this.#set({ text });
    keepText(this.#mark, { text, basedOn: this.#keeper?.version ?? 0 });
    this.#keeper?.touch(text);
  };

  /** Keeps the text as a saved version. */
  readonly save = async (reason?: string): Promise<Sent> => (await this.#keeper?.send('saved', reason)) ?? 'refused';

  /** After a conflict: `mine` goes on top of the newer version, `theirs` replaces the text here. */
  readonly resolve = (side: 'mine' | 'theirs'): void => {
    const { save, text } = this.state();
    if (save.kind !== 'conflict') return;
    const { version, text: theirs } = save.current;
    this.#keeper?.baseOn(version);
    this.#set({ save: { kind: 'pending', version } });
    if (side === 'mine') this.#keeper?.touch(text);
    else this.setText(theirs);
  };

  /** The page is left: what is not sent yet goes now. */
  async close(): Promise<void> {
    // A field that closes with the page hands on what was typed first.
    await Promise.resolve();
    this.#keeper?.stop();
    if (this.state().save.kind === 'pending') await this.#keeper?.send('draft');
    this.#keeper?.stop();
  }

  #begin(newest: DocumentVersion | undefined, mine: { readonly text: string; readonly basedOn: number }): void {
    const { version, text: stored } = newest ?? { version: mine.basedOn, text: '' };
    this.#keeper = new Keeper({ ...this.#document, version, text: stored }, (news) => {
      this.#hear(news);
    });
    const isBehind = newest !== undefined && mine.basedOn < version && mine.text !== stored;
    const save: SaveState = isBehind
      ? { kind: 'conflict', current: newest, yours: mine.text }
      : { kind: 'kept', version };
    this.#set({ kind: 'there', text: mine.text, save });
    if (!isBehind && mine.text !== stored) this.#keeper.touch(mine.text);
  }

  #hear(news: KeeperNews): void {
    if (news.kind !== 'kept') {
      this.#set({ save: news });
      return;
    }
    const isNewest = this.state().text === news.text;
    if (isNewest) forgetText(this.#mark);
    this.#set({ save: { kind: isNewest ? 'kept' : 'pending', version: news.version } });
  }

  #set(change: Partial<FileState>): void {
    this.#store.set({ ...this.state(), ...change });
  }
}

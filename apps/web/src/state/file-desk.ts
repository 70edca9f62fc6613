import { emitter } from './emitter.ts';
import { HeldDocument } from './held-document.ts';
import type { KeeperNews } from './keeper.ts';
import { keptInBrowser } from './kept-in-browser.ts';
import type { DocumentName, KeptTexts } from './kept-texts.ts';
import { keptVersion } from './named-file.ts';
import { THIS_BROWSER } from './this-browser.ts';
import type { SaveOutcome, SaveState } from './workbench-state.ts';

/** What is known of the file that is open. */
export interface FileState {
  /** `asking`: the server has not answered yet; `none`: nothing is kept under this name. */
  readonly kind: 'asking' | 'none' | 'there';
  readonly text: string;
  readonly save: SaveState;
  /** Whether this browser holds what the server has not got. */
  readonly isKeptHere: boolean;
}

const ASKING: FileState = { kind: 'asking', text: '', save: { kind: 'kept', version: 0 }, isKeptHere: true };

/** The desks that are open hear what other tabs do, and when the person comes back to this one. */
const OPEN = new Set<HeldDocument>();
let kept: KeptTexts | undefined;

function keptTexts(): KeptTexts {
  return (kept ??= keptInBrowser(THIS_BROWSER, {
    onReturn: () => {
      for (const held of OPEN) void held.refresh(false);
    },
    onRemoved: (key) => {
      for (const held of OPEN) if (held.noticed(key)) void held.refresh(false);
    },
  }));
}

/** The desk on which a document that is no product is changed: drafts follow by themselves, saved versions on request. */
export class FileDesk {
  readonly #document: DocumentName;
  readonly #beginsEmpty: boolean;
  readonly #store = emitter<FileState>(ASKING);
  #held: HeldDocument | undefined;

  readonly state = this.#store.get;
  readonly subscribe = this.#store.subscribe;

  constructor(document: DocumentName, { beginsEmpty = false }: { readonly beginsEmpty?: boolean } = {}) {
    this.#document = document;
    this.#beginsEmpty = beginsEmpty;
  }

  /**
   * Looks up what is kept, on the server and in this browser. What was typed meanwhile goes on top of it.
   *
   * @throws ServerProblem when neither can say; never for a document that may begin empty
   */
  async open(): Promise<void> {
    const texts = keptTexts();
    const mine = texts.take(this.#document);
    const newest = await keptVersion(this.#document).then(
      (version) => version ?? 'none',
      (error: unknown) => {
        if (mine || this.#beginsEmpty) return 'unknown' as const;
        throw error;
      },
    );
    if (newest === 'none' && !mine && !this.#beginsEmpty) {
      this.#set({ kind: 'none' });
      return;
    }
    this.#set({ save: { kind: 'kept', version: typeof newest === 'object' ? newest.version : 0 } });
    const holding = { name: this.#document, texts, isSame: (one: string, other: string) => one === other };
    this.#held = new HeldDocument({ ...holding, tell: this.#hear }, { mine, newest });
    OPEN.add(this.#held);
    const typed = this.state().text;
    this.#set({ kind: 'there', text: typed === ASKING.text ? this.#held.text : typed });
    if (typed !== ASKING.text) this.#held.touch(typed);
  }

  readonly setText = (text: string): void => {
    if (text === this.state().text) return;
    this.#set({ text });
    this.#held?.touch(text);
  };

  /** Keeps the text as a saved version. */
  readonly save = async (reason: string): Promise<SaveOutcome> =>
    (await this.#held?.save(reason)) ?? { kind: 'offline' };

  /** After a conflict: `mine` goes on top of the newer version, `theirs` replaces the text here. */
  readonly resolve = (side: 'mine' | 'theirs'): void => {
    const { save } = this.state();
    if (save.kind !== 'conflict') return;
    if (side === 'mine') this.#held?.insist();
    else {
      this.#held?.adopt(save.current);
      this.#set({ text: save.current.text });
    }
  };

  /** The page is left: what is not sent yet goes now. */
  async close(): Promise<void> {
    // A field that closes with the page hands on what was typed first.
    await Promise.resolve();
    const held = this.#held;
    if (!held) return;
    OPEN.delete(held);
    await held.sendDraft();
    held.close();
  }

  readonly #hear = (news: KeeperNews, isKeptHere: boolean): void => {
    if (news.kind !== 'newer') {
      this.#set({ save: news, isKeptHere });
      return;
    }
    this.#held?.adopt(news.current);
    this.#set({ text: news.current.text });
  };

  #set(change: Partial<FileState>): void {
    this.#store.set({ ...this.state(), ...change });
  }
}

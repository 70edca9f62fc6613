import type { DocumentVersion } from '@fillwright/contract/documents';
import { listDocuments, newestVersion } from './documents-client.ts';
import { Keeper, type Beginning, type KeeperNews } from './keeper.ts';
import type { DocumentName, KeptText, KeptTexts } from './kept-texts.ts';
import type { SaveOutcome } from './workbench-state.ts';

/** What there is of a document when it is opened. */
export interface Found {
  /** Kept in this browser and not acknowledged by the server. */
  readonly mine: KeptText | undefined;
  /** On the server; `unknown` while it does not answer. */
  readonly newest: DocumentVersion | 'none' | 'unknown';
}

/** Where there is no version yet there is nothing to send either. */
const NOTHING = { text: '', status: 'draft', version: 0 } as const;

interface Holding {
  readonly name: DocumentName;
  readonly texts: KeptTexts;
  readonly isSame: Beginning['isSame'];
  /** News, and whether this browser holds what the server has not got. */
  readonly tell: (news: KeeperNews, isKeptHere: boolean) => void;
}

/** One open document: on the server as soon as it can be, in this browser until then. */
export class HeldDocument {
  readonly #holding: Holding;
  readonly #keeper: Keeper;
  #text: string;
  /** Then the place in this browser belongs to whoever opens the document next. */
  #isClosed = false;

  constructor(holding: Holding, found: Found) {
    this.#holding = holding;
    const beginning = beginningOf(found);
    this.#text = beginning.text;
    this.#keeper = new Keeper(holding.name, { ...beginning, isSame: holding.isSame }, (news) => {
      this.#hear(news);
    });
    if (!found.mine) return;
    if (typeof found.newest === 'object') this.#keeper.meet(found.newest);
    this.#keeper.touch(this.#text);
  }

  get text(): string {
    return this.#text;
  }

  get version(): number {
    return this.#keeper.version;
  }

  touch(text: string): void {
    this.#text = text;
    this.#keeper.touch(text);
  }

  save(reason: string | undefined): Promise<SaveOutcome> {
    return this.#keeper.send('saved', reason);
  }

  sendDraft(): Promise<SaveOutcome> {
    return this.#keeper.send('draft');
  }

  adopt(version: DocumentVersion): void {
    this.#text = version.text;
    this.#keeper.adopt(version);
  }

  insist(): void {
    this.#keeper.insist();
  }

  close(): void {
    this.#isClosed = true;
    this.#keeper.close();
  }

  /** Looks whether somebody kept a newer version. While something is unsent, the answer to it tells. */
  async refresh(isDisputed: boolean): Promise<void> {
    const { version, isAtRest } = this.#keeper;
    if (!isAtRest && !isDisputed) return;
    const newest = await newestOf(this.#holding.name, version).catch(() => undefined);
    const isStill = this.#keeper.version === version && !this.#keeper.isBusy;
    if (newest && isStill && newest.version > version) this.#keeper.meet(newest);
  }

  /**
   * Another tab removed what this browser keeps.
   *
   * @param key - of what was removed; null: of everything
   * @returns whether that tab may have brought a newer version to the server
   */
  noticed(key: string | null): boolean {
    const { texts, name } = this.#holding;
    const place = key === null ? 'mine' : texts.placeOf(name, key);
    if (place === 'mine' && !this.#keeper.isAtRest) this.#hold();
    return place === 'other';
  }

  #hold(): boolean {
    const { version, sent } = this.#keeper;
    return this.#holding.texts.keep(this.#holding.name, { text: this.#text, basedOn: version, sent });
  }

  #hear(news: KeeperNews): void {
    const { texts, name, tell } = this.#holding;
    const isKept = news.kind === 'kept';
    if (isKept) texts.forget(name, this.#text);
    if (this.#isClosed) return;
    if (isKept) texts.free(name);
    const isUnsent = !isKept && news.kind !== 'newer';
    tell(news, isUnsent ? this.#hold() : texts.isOpen);
  }
}

/** What is kept here comes first; without it, what the server has. */
function beginningOf({ mine, newest }: Found): Omit<Beginning, 'isSame'> {
  if (mine) return { text: mine.text, version: newest === 'none' ? 0 : mine.basedOn, sent: mine.sent };
  const kept = typeof newest === 'object' ? newest : NOTHING;
  return { text: kept.text, version: kept.version, sent: [], kept };
}

/** Looked up in the list where no version is known: that there is none is no fault to be reported. */
async function newestOf({ kind, id }: DocumentName, known: number): Promise<DocumentVersion | undefined> {
  if (known === 0 && !(await listDocuments(kind)).some((head) => head.id === id)) return undefined;
  return newestVersion(kind, id);
}

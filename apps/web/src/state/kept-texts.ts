import type { DocumentKind } from '@fillwright/contract/documents';
import type { BrowserBox } from './browser-box.ts';

/** A text that the server has not acknowledged, kept in this browser so that nothing typed is lost. */
export interface KeptText {
  readonly text: string;
  /** Version on the server it is based on. */
  readonly basedOn: number;
  /** Texts sent on top of that version that nobody answered: if one of them is the newest version, it is ours. */
  readonly sent: readonly string[];
}

export interface DocumentName {
  readonly kind: DocumentKind;
  readonly id: string;
}

const PREFIX = 'fillwright.kept.';

/** Texts of all documents. Each tab has a place of its own for each, so that no tab overwrites or forgets another's. */
export class KeptTexts {
  readonly #box: BrowserBox;
  readonly #tab: string;

  constructor(box: BrowserBox, tab: string) {
    this.#box = box;
    this.#tab = tab;
  }

  /** Whether this browser keeps anything at all. */
  get isOpen(): boolean {
    const key = `fillwright.try.${this.#tab}`;
    const isTaken = this.#box.set(key, '');
    this.#box.remove(key);
    return isTaken;
  }

  /** The text of this tab; or else the newest that a tab left behind, which becomes this tab's. */
  take(name: DocumentName): KeptText | undefined {
    const mine = this.#at(this.#key(name));
    if (mine) return mine;
    const left = this.#newest(name);
    if (!left) return undefined;
    // A tab that is still there and needs it hears of this and keeps it anew.
    if (this.keep(name, left.kept)) this.#box.remove(left.key);
    return left.kept;
  }

  /** The newest text that any tab keeps, which stays where it is. */
  look(name: DocumentName): KeptText | undefined {
    return this.#newest(name)?.kept;
  }

  /** False when the browser does not take it. */
  keep(name: DocumentName, { text, basedOn, sent }: KeptText): boolean {
    const written: Written = { text, basedOn, sent, at_ms: Date.now() };
    return this.#box.set(this.#key(name), JSON.stringify(written));
  }

  /** The server has what this tab has: its place is free. */
  free(name: DocumentName): void {
    this.#box.remove(this.#key(name));
  }

  /** The server has this text: no place needs to hold it. */
  forget(name: DocumentName, text: string): void {
    for (const key of this.#keysOf(name)) if (this.#at(key)?.text === text) this.#box.remove(key);
  }

  /** What a change of the browser's storage by another tab means to a document: its text of this tab, or another's. */
  placeOf(name: DocumentName, key: string): 'mine' | 'other' | undefined {
    if (key === this.#key(name)) return 'mine';
    return key.startsWith(prefixOf(name)) ? 'other' : undefined;
  }

  /** Ids of the documents of a kind of which something is kept here. */
  ids(kind: DocumentKind): readonly string[] {
    const start = `${PREFIX}${kind}.`;
    const keys = this.#box.keys().filter((key) => key.startsWith(start));
    return [...new Set(keys.map((key) => key.slice(start.length).split('.')[0] ?? ''))];
  }

  #newest(name: DocumentName): { readonly key: string; readonly kept: Written } | undefined {
    return this.#keysOf(name)
      .map((key) => ({ key, kept: this.#at(key) }))
      .filter((one): one is { key: string; kept: Written } => one.kept !== undefined)
      .sort((one, other) => other.kept.at_ms - one.kept.at_ms)[0];
  }

  #key(name: DocumentName): string {
    return `${prefixOf(name)}${this.#tab}`;
  }

  #keysOf(name: DocumentName): readonly string[] {
    return this.#box.keys().filter((key) => key.startsWith(prefixOf(name)));
  }

  #at(key: string): Written | undefined {
    try {
      const { text, basedOn, sent, at_ms } = JSON.parse(this.#box.get(key) ?? '{}') as Partial<Written>;
      if (typeof text !== 'string' || typeof basedOn !== 'number') return undefined;
      return { text, basedOn, sent: Array.isArray(sent) ? sent : [], at_ms: at_ms ?? 0 };
    } catch {
      return undefined;
    }
  }
}

interface Written extends KeptText {
  readonly at_ms: number;
}

function prefixOf({ kind, id }: DocumentName): string {
  return `${PREFIX}${kind}.${id}.`;
}

import { documentChoice, isSameChoice } from './design-document.ts';
import { HeldDocument, type Found } from './held-document.ts';
import type { KeeperNews } from './keeper.ts';
import type { KeptTexts } from './kept-texts.ts';
import type { NamedFile } from './named-file.ts';
import type { Choice, ProductKind, SaveOutcome } from './workbench-state.ts';

/** News of one of the two documents. */
export interface ProductNews {
  readonly kind: ProductKind;
  readonly news: KeeperNews;
  /** Whether this browser holds what the server has not got. */
  readonly isKeptHere: boolean;
}

/** Where the levers stand, and the files that they rest on. */
interface Standing {
  readonly choice: Choice;
  readonly files: readonly NamedFile[];
}

interface Product {
  readonly id: string;
  readonly texts: KeptTexts;
  readonly found: Readonly<Record<ProductKind, Found>>;
}

/** The two documents of the product that is open: its brief, and where the levers stand. */
export class OpenProduct {
  readonly brief: HeldDocument;
  readonly design: HeldDocument;

  constructor({ id, texts, found }: Product, tell: (news: ProductNews) => void) {
    const held = (kind: ProductKind, isSame: (one: string, other: string) => boolean): HeldDocument =>
      new HeldDocument(
        {
          name: { kind, id },
          texts,
          isSame,
          tell: (news, isKeptHere) => {
            tell({ kind, news, isKeptHere });
          },
        },
        found[kind],
      );
    this.brief = held('brief', (one, other) => one === other);
    this.design = held('design', isSameChoice);
  }

  /** The levers were moved; a draft follows. */
  keepChoice({ choice, files }: Standing): void {
    this.design.touch(documentChoice(choice, { version: this.brief.version, files }));
  }

  /** Saves the brief, and on it where the levers stand. */
  async save(standing: Standing | undefined, reason: string | undefined): Promise<SaveOutcome> {
    const brief = await this.brief.save(reason);
    if (brief.kind !== 'kept' || !standing) return brief;
    this.keepChoice(standing);
    return this.design.save(reason);
  }

  /** Looks whether somebody kept a newer version of either. */
  async refresh(isDisputed: (kind: ProductKind) => boolean): Promise<void> {
    await this.brief.refresh(isDisputed('brief'));
    await this.design.refresh(isDisputed('design'));
  }

  /** Another tab changed what this browser keeps. @returns whether that may mean a newer version on the server */
  noticed(key: string | null): boolean {
    return [this.brief, this.design].map((document) => document.noticed(key)).includes(true);
  }

  close(): void {
    this.brief.close();
    this.design.close();
  }
}

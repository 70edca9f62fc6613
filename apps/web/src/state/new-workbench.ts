import type { DocumentVersion } from '@fillwright/contract/documents';
import type { ValuePath } from '@fillwright/contract/files';
import type { Settings } from '@fillwright/engine/dosing';
import { COMPUTING_WORDS } from '@fillwright/words/en';
import type { DesignWorker } from './design-calls.ts';
import { choiceIn, restedOn } from './design-document.ts';
import { DeskStore } from './desk-store.ts';
import type { Found } from './held-document.ts';
import { keptInBrowser, type BrowserParts } from './kept-in-browser.ts';
import type { KeptTexts } from './kept-texts.ts';
import { Levers } from './levers.ts';
import { OpenProduct, type ProductNews } from './open-product.ts';
import { openingOf } from './opening.ts';
import { productId } from './product-id.ts';
import type { Step } from './steps.ts';
import type { ProductKind, SaveState, Workbench, WorkbenchState } from './workbench-state.ts';

/** What a workbench stands on. */
export interface WorkbenchParts extends BrowserParts {
  readonly startWorker: () => DesignWorker;
}

const NOT_THERE: Found = { mine: undefined, newest: 'none' };

class Desk implements Workbench {
  readonly #store = new DeskStore();
  readonly #levers: Levers;
  readonly #parts: WorkbenchParts;
  #kept: KeptTexts | undefined;
  #product: OpenProduct | undefined;
  #isKeptHere: Readonly<Record<ProductKind, boolean>> = { brief: true, design: true };
  #opened: { readonly id: string; readonly done: Promise<void> } | undefined;
  /** Counts the products that were opened: what was asked for an older one is dropped. */
  #turn = 0;

  readonly state = this.#store.state;
  readonly subscribe = this.#store.subscribe;

  constructor(parts: WorkbenchParts) {
    this.#parts = parts;
    this.#levers = new Levers(this.#store, parts.startWorker);
  }

  readonly open = (id: string): Promise<void> => {
    if (this.#opened?.id === id) {
      this.#refresh();
      return this.#opened.done;
    }
    const opened = { id, done: this.#open(id, this.#begin(id)) };
    this.#opened = opened;
    // What failed is tried again the next time.
    opened.done.catch(() => {
      if (this.#opened === opened) this.#opened = undefined;
    });
    return opened.done;
  };

  readonly reread = async (): Promise<void> => {
    if (this.#product) await this.#levers.read();
  };

  readonly create = async (text: string): Promise<string> => {
    const id = await productId(text, this.#texts.ids('brief'));
    const product = this.#watch(this.#begin(id), { id, found: { brief: NOT_THERE, design: NOT_THERE } });
    this.#opened = { id, done: Promise.resolve() };
    this.#store.set({ text });
    product.brief.touch(text);
    await Promise.all([product.brief.sendDraft(), this.#levers.read()]);
    return id;
  };

  readonly setText = (text: string): void => {
    if (!this.#product || text === this.state().text) return;
    this.#store.step({ text });
    this.#apply(text);
  };

  readonly setValue = (path: ValuePath, value: unknown): void => {
    const turn = this.#turn;
    import('@fillwright/contract/files').then(
      ({ changedText }) => {
        if (turn === this.#turn) this.setText(changedText(this.state().text, path, value));
      },
      () => {
        this.#store.set({ failure: COMPUTING_WORDS.notLoaded });
      },
    );
  };

  readonly move = (settings: Settings, phase: 'moving' | 'settled'): void => {
    const { choice, before } = this.state();
    if (!choice) return;
    const hasStood = this.#levers.stand({ ...choice, settings }, { phase, isStep: !before });
    if (hasStood && phase === 'settled') this.#keepChoice();
  };

  readonly take = (rank: number): void => {
    const found = this.state().design?.candidates.find((candidate) => candidate.rank === rank);
    if (!found) return;
    const choice = { size: found.size, method: found.method, settings: found.settings };
    if (this.#levers.stand(choice, { phase: 'settled', isStep: true })) this.#keepChoice();
  };

  readonly takeNewerFiles = (): void => {
    this.#keepChoice();
  };

  readonly undo = (): void => {
    this.#goTo(this.#store.go('back'));
  };

  readonly redo = (): void => {
    this.#goTo(this.#store.go('forth'));
  };

  readonly saveDesign: Workbench['saveDesign'] = async (reason) => {
    const standing = this.#standing();
    const outcome = await this.#product?.save(standing, reason);
    if (standing && outcome?.kind === 'kept') this.#store.set({ restedOn: standing.files });
    return outcome ?? { kind: 'refused', why: COMPUTING_WORDS.nothingOpen };
  };

  readonly resolve: Workbench['resolve'] = (kind, side) => {
    const save = this.#saveOf(kind);
    if (save.kind !== 'conflict') return;
    if (side === 'mine') this.#product?.[kind].insist();
    else this.#takeOver(kind, save.current);
  };

  /** Asked for when a product is first opened: nothing is kept before. */
  get #texts(): KeptTexts {
    this.#kept ??= keptInBrowser(this.#parts, {
      onReturn: () => {
        this.#refresh();
      },
      onRemoved: (key) => {
        if (this.#product?.noticed(key)) this.#refresh();
      },
    });
    return this.#kept;
  }

  #refresh(): void {
    void this.#product?.refresh((kind) => this.#saveOf(kind).kind === 'conflict');
  }

  #saveOf(kind: ProductKind): SaveState {
    return kind === 'brief' ? this.state().save : this.state().choiceSave;
  }

  #begin(id: string): number {
    this.#product?.close();
    this.#product = undefined;
    this.#levers.forget();
    this.#isKeptHere = { brief: this.#texts.isOpen, design: true };
    this.#store.begin(id, this.#isKeptHere.brief);
    return ++this.#turn;
  }

  async #open(id: string, turn: number): Promise<void> {
    const found = await openingOf(id, this.#texts);
    if (turn !== this.#turn) return;
    const { brief, design } = this.#watch(turn, { id, found });
    const choice = choiceIn(design.text);
    this.#store.set({ text: brief.text, restedOn: restedOn(design.text), ...(choice ? { choice } : {}) });
    await this.#levers.read();
  }

  #watch(turn: number, product: { id: string; found: Readonly<Record<ProductKind, Found>> }): OpenProduct {
    const save = (kind: ProductKind): WorkbenchState['save'] => {
      const { newest } = product.found[kind];
      return { kind: 'kept', version: typeof newest === 'object' ? newest.version : 0 };
    };
    this.#store.set({ save: save('brief'), choiceSave: save('design') });
    this.#product = new OpenProduct({ ...product, texts: this.#texts }, (news) => {
      if (turn === this.#turn) this.#hear(news);
    });
    return this.#product;
  }

  #hear({ kind, news, isKeptHere }: ProductNews): void {
    if (news.kind === 'newer') {
      this.#takeOver(kind, news.current);
      return;
    }
    const { save: last, brief } = this.state();
    this.#isKeptHere = { ...this.#isKeptHere, [kind]: isKeptHere };
    const here = { isKeptHere: this.#isKeptHere.brief && this.#isKeptHere.design };
    this.#store.set(kind === 'brief' ? { save: news, ...here } : { choiceSave: news, ...here });
    // What the brief names is read from the server.
    if (last.kind === 'offline' && news.kind === 'kept' && brief.kind === 'faulty') void this.#levers.read();
  }

  /** The newer version of somebody else, or of another tab; what was here stays in undo. */
  #takeOver(kind: ProductKind, current: DocumentVersion): void {
    if (!this.#product || this.state().before) return;
    this.#product[kind].adopt(current);
    if (kind === 'brief') {
      this.#store.step({ text: current.text });
      this.#store.set({ text: current.text });
      void this.#levers.read();
      return;
    }
    const choice = choiceIn(current.text);
    if (!choice) return;
    this.#store.step({ choice });
    this.#store.set({ choice, restedOn: restedOn(current.text) });
    this.#levers.stand(choice, { phase: 'settled' });
  }

  /** A draft of the lever positions follows; only after a person moved them, never because a product was opened. */
  #keepChoice(): void {
    const standing = this.#standing();
    if (!standing) return;
    this.#store.set({ restedOn: standing.files });
    this.#product?.keepChoice(standing);
  }

  /** Where the levers stand, and the files that they rest on. */
  #standing(): Parameters<OpenProduct['save']>[0] {
    const { brief, choice } = this.state();
    return choice && { choice, files: brief.kind === 'sound' ? brief.files : [] };
  }

  #apply(text: string): void {
    this.#store.set({ text });
    this.#product?.brief.touch(text);
    void this.#levers.read();
  }

  #goTo(to: Step | undefined): void {
    if (!to) return;
    const last = this.#store.now();
    const { text, choice } = to;
    const isMoved = choice !== undefined && choice !== last.choice;
    this.#store.set(isMoved ? { choice } : {});
    if (text !== last.text) this.#apply(text);
    else if (choice) this.#levers.stand(choice, { phase: 'settled' });
    if (isMoved) this.#keepChoice();
  }
}

/**
 * A workbench with nothing open.
 *
 * @param parts - what the browser keeps, what it tells, and the worker
 * @returns the workbench
 */
export function newWorkbench(parts: WorkbenchParts): Workbench {
  return new Desk(parts);
}

import type { ValuePath } from '@fillwright/contract/files';
import { DomainError } from '@fillwright/engine/catalogue';
import { candidateAt, placesOf, type Candidate, type Place, type SearchInput } from '@fillwright/engine/design';
import type { Settings } from '@fillwright/engine/dosing';
import { domainErrorSentence } from '@fillwright/words/en';
import { Keeper, type KeeperNews } from './keeper.ts';
import { startDesignWorker, type DesignWorker } from './design-calls.ts';
import { documentChoice } from './design-document.ts';
import { emitter } from './emitter.ts';
import { openingOf } from './opening.ts';
import { rest } from './rest.ts';
import { forgetText, keepText } from './kept-text.ts';
import { productId } from './product-id.ts';
import { readText } from './reading.ts';
import { NO_STEPS, redone, stepped, undone, type Step, type Steps } from './steps.ts';
import type { BriefState, Choice, WorkbenchState } from './workbench-state.ts';

/** The one store of the app: pages read `state`, and change it only through these. */
export interface Workbench {
  readonly state: () => WorkbenchState;
  readonly subscribe: (listener: () => void) => () => void;
  /** Opens a stored brief with the newest design choice on it. */
  readonly open: (id: string) => Promise<void>;
  /** Reads the files that the brief names once more: one of them was kept anew. */
  readonly reread: () => Promise<void>;
  /** Starts a new document from a text; resolves with its id once it is stored (or kept in this browser). */
  readonly create: (text: string) => Promise<string>;
  /** Replaces the whole text of the brief, as an editor or an opened file does. One step of undo. */
  readonly setText: (text: string) => void;
  /** Changes one value of the brief's text, comments and layout kept; undefined removes the key. One step of undo. */
  readonly setValue: (path: ValuePath, value: unknown) => void;
  /** Puts the levers somewhere: `moving` while a drag is under way, `settled` when it is let go or a key stepped. */
  readonly move: (settings: Settings, phase: 'moving' | 'settled') => void;
  /** Takes a candidate of the ranking. */
  readonly take: (rank: number) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Saves brief and design choice under the person's name; a reason is needed when a saved one is superseded. */
  readonly saveDesign: (reason?: string) => Promise<'kept' | 'reason-needed' | 'offline' | 'conflict' | 'refused'>;
  /** After a conflict: `mine` goes on top of the newer version, `theirs` replaces the text here (mine stays in undo). */
  readonly resolve: (choice: 'mine' | 'theirs') => void;
}

const EMPTY: WorkbenchState = {
  text: '',
  brief: { kind: 'reading' },
  save: { kind: 'kept', version: 0 },
  isSearching: false,
  areDetailsPending: false,
  canUndo: false,
  canRedo: false,
};

class Desk implements Workbench {
  readonly #store = emitter<WorkbenchState>(EMPTY);
  #worker: DesignWorker | undefined;
  #steps: Steps = NO_STEPS;
  #keepers: { readonly brief: Keeper; readonly design: Keeper } | undefined;
  #places: { readonly input: SearchInput; readonly list: readonly Place[] } | undefined;
  #reading = 0;

  readonly state = this.#store.get;
  readonly subscribe = this.#store.subscribe;

  readonly open = async (id: string): Promise<void> => {
    if (this.state().id === id) return;
    this.#begin(id);
    const opening = await openingOf(id);
    if (this.state().id !== id) return;
    this.#watch(opening);
    const { version, text, choice, conflict } = opening;
    this.#set({ text, save: conflict ?? { kind: 'kept', version }, ...(choice ? { choice } : {}) });
    if (!conflict && text !== opening.storedText) this.#keepers?.brief.touch(text);
    await this.#read();
  };

  readonly reread = async (): Promise<void> => {
    if (this.state().id !== undefined) await this.#read();
  };

  readonly create = async (text: string): Promise<string> => {
    const id = await productId(text);
    keepText(id, { text, basedOn: 0 });
    this.#begin(id);
    this.#watch({ id, version: 0, storedText: '', designVersion: 0, designText: '' });
    this.#set({ text, save: { kind: 'pending', version: 0 } });
    this.#keepers?.brief.touch(text);
    await Promise.all([this.#keepers?.brief.send('draft'), this.#read()]);
    return id;
  };

  readonly setText = (text: string): void => {
    if (text === this.state().text) return;
    this.#steps = stepped(this.#steps, this.#now());
    this.#apply(text);
  };

  readonly setValue = (path: ValuePath, value: unknown): void => {
    void import('@fillwright/contract/files').then(({ changedText }) => {
      this.setText(changedText(this.state().text, path, value));
    });
  };

  readonly move = (settings: Settings, phase: 'moving' | 'settled'): void => {
    const { choice, before } = this.state();
    if (!choice) return;
    if (!before) this.#steps = stepped(this.#steps, this.#now());
    this.#stand({ ...choice, settings }, phase);
    if (phase === 'settled') this.#keepChoice();
  };

  readonly take = (rank: number): void => {
    const found = this.state().design?.candidates.find((candidate) => candidate.rank === rank);
    if (!found) return;
    this.#steps = stepped(this.#steps, this.#now());
    this.#stand({ size: found.size, method: found.method, settings: found.settings }, 'settled');
    this.#keepChoice();
  };

  readonly undo = (): void => {
    this.#goTo(undone(this.#steps, this.#now()));
  };

  readonly redo = (): void => {
    this.#goTo(redone(this.#steps, this.#now()));
  };

  readonly saveDesign: Workbench['saveDesign'] = async (reason) => {
    const keepers = this.#keepers;
    if (!keepers) return 'refused';
    const brief = await keepers.brief.send('saved', reason);
    if (brief !== 'kept') return brief;
    const { choice } = this.state();
    if (!choice) return 'kept';
    keepers.design.touch(documentChoice(choice, this.#restsOn(keepers.brief.version)));
    return keepers.design.send('saved', reason);
  };

  readonly resolve = (side: 'mine' | 'theirs'): void => {
    const { save, text } = this.state();
    if (save.kind !== 'conflict') return;
    this.#keepers?.brief.baseOn(save.current.version);
    this.#set({ save: { kind: 'pending', version: save.current.version } });
    if (side === 'mine') this.#keepers?.brief.touch(text);
    else this.setText(save.current.text);
  };

  #set(change: Partial<WorkbenchState>): void {
    const { past, future } = this.#steps;
    this.#store.set({ ...this.state(), ...change, canUndo: past.length > 0, canRedo: future.length > 0 });
  }

  #begin(id: string): void {
    this.#steps = NO_STEPS;
    this.#keepers?.brief.stop();
    this.#keepers?.design.stop();
    this.#store.set({ ...EMPTY, id });
  }

  #watch(at: { id: string; version: number; storedText: string; designVersion: number; designText: string }): void {
    const { id } = at;
    this.#keepers = {
      brief: new Keeper({ kind: 'brief', id, version: at.version, text: at.storedText }, (news) => {
        this.#hear(id, news);
      }),
      design: new Keeper({ kind: 'design', id, version: at.designVersion, text: at.designText }, () => undefined),
    };
  }

  #hear(id: string, news: KeeperNews): void {
    if (this.state().id !== id) return;
    if (news.kind !== 'kept') {
      this.#set({ save: news });
      return;
    }
    const isNewest = this.state().text === news.text;
    if (isNewest) forgetText(id);
    this.#set({ save: { kind: isNewest ? 'kept' : 'pending', version: news.version } });
  }

  #now(): Step {
    const { text, choice } = this.state();
    return choice ? { text, choice } : { text };
  }

  #sound(): SearchInput | undefined {
    const { brief } = this.state();
    return brief.kind === 'sound' ? brief.input : undefined;
  }

  #restsOn(version: number): Parameters<typeof documentChoice>[1] {
    const { brief } = this.state();
    return { version, files: brief.kind === 'sound' ? brief.files : [] };
  }

  #candidateOf(input: SearchInput, choice: Choice): Candidate | string {
    if (this.#places?.input !== input) this.#places = { input, list: placesOf(input).places };
    const place = this.#places.list.find(
      ({ record, method }) => record.size === choice.size && method.id === choice.method,
    );
    if (!place) return domainErrorSentence('no-geometry', { size: choice.size });
    try {
      return candidateAt(input, place, choice.settings);
    } catch (error) {
      if (error instanceof DomainError) return domainErrorSentence(error.code, error.facts);
      throw error;
    }
  }

  /** The levers stand at `choice`; what is dear follows from the worker. */
  #stand(choice: Choice, phase: 'moving' | 'settled'): void {
    const input = this.#sound();
    if (!input) return;
    const found = this.#candidateOf(input, choice);
    if (typeof found === 'string') {
      this.#set({ refusal: found });
      return;
    }
    const { candidate: last, before, refusal: _refusal, ...rest } = this.state();
    const old = before ?? last;
    const moving = phase === 'moving' && old ? { before: old } : {};
    const { past, future } = this.#steps;
    this.#store.set({
      ...{ ...rest, ...moving, choice, candidate: found, areDetailsPending: true },
      ...{ canUndo: past.length > 0, canRedo: future.length > 0 },
    });
    void this.#refine(input, choice, phase);
  }

  /** A draft of the lever positions follows; only after a person moved them, never because a product was opened. */
  #keepChoice(): void {
    const { choice } = this.state();
    const keepers = this.#keepers;
    if (choice && keepers) keepers.design.touch(documentChoice(choice, this.#restsOn(keepers.brief.version)));
  }

  async #refine(input: SearchInput, choice: Choice, phase: 'moving' | 'settled'): Promise<void> {
    // While a lever is on its way every frame belongs to the drawing; the old figures stay, shown as pending.
    if (phase === 'moving') await rest();
    if (this.state().choice !== choice) return;
    const details = await (this.#worker ??= startDesignWorker()).details(input, choice);
    if (details && this.state().choice === choice) this.#set({ details, areDetailsPending: false });
  }

  async #search(input: SearchInput): Promise<void> {
    this.#set({ isSearching: true });
    const design = await (this.#worker ??= startDesignWorker()).search(input);
    if (!design || this.#sound() !== input) return;
    this.#set({ design, isSearching: false });
    const [first] = design.candidates;
    if (!this.state().candidate && first)
      this.#stand({ size: first.size, method: first.method, settings: first.settings }, 'settled');
  }

  /** Reads the text again; the levers stay where they were as far as the new brief allows. */
  async #read(): Promise<void> {
    const turn = ++this.#reading;
    const brief: BriefState = await readText(this.state().text);
    if (turn !== this.#reading) return;
    this.#set({ brief });
    if (brief.kind !== 'sound') return;
    const { choice } = this.state();
    if (choice && typeof this.#candidateOf(brief.input, choice) !== 'string') this.#stand(choice, 'settled');
    else {
      const { candidate: _candidate, details: _details, choice: _choice, ...rest } = this.state();
      this.#store.set(rest);
    }
    await this.#search(brief.input);
  }

  #apply(text: string): void {
    const { id } = this.state();
    this.#set({ text });
    if (id !== undefined) keepText(id, { text, basedOn: this.#keepers?.brief.version ?? 0 });
    this.#keepers?.brief.touch(text);
    void this.#read();
  }

  #goTo(found: { readonly to: Step; readonly steps: Steps } | undefined): void {
    if (!found) return;
    this.#steps = found.steps;
    const { text, choice } = found.to;
    if (choice) this.#set({ choice });
    if (text !== this.state().text) this.#apply(text);
    else if (choice) this.#stand(choice, 'settled');
    this.#keepChoice();
  }
}

export const workbench: Workbench = new Desk();

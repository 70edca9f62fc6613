import type { SearchInput } from '@fillwright/engine/design';
import { COMPUTING_WORDS } from '@fillwright/words/en';
import { Computing, failureOf } from './computing.ts';
import type { DesignWorker } from './design-calls.ts';
import type { DeskStore } from './desk-store.ts';
import { readText } from './reading.ts';
import { rest } from './rest.ts';
import type { BriefState, Choice } from './workbench-state.ts';

/** Reads the brief and computes what follows from it and from where the levers stand. */
export class Levers {
  readonly #store: DeskStore;
  readonly #computing: Computing;
  #reading = 0;

  constructor(store: DeskStore, startWorker: () => DesignWorker) {
    this.#store = store;
    this.#computing = new Computing(startWorker);
  }

  /** Another product is being opened: what is being read is no longer wanted. */
  forget(): void {
    this.#reading++;
  }

  /** The levers stand at `choice`; what is dear follows from the worker. False where they cannot. */
  stand(choice: Choice, how: { readonly phase: 'moving' | 'settled'; readonly isStep?: boolean }): boolean {
    const input = this.#sound();
    if (!input) return false;
    const found = this.#computing.candidate(input, choice);
    const { candidate, before = candidate } = this.#store.state();
    if (typeof found === 'string') {
      this.#store.set({ refusal: found }, ...(how.phase === 'settled' ? (['before'] as const) : []));
      return false;
    }
    if (how.isStep) this.#store.step({ choice });
    const moving = how.phase === 'moving' && before ? { before } : {};
    const change = { ...moving, choice, candidate: found, areDetailsPending: true };
    this.#store.set(change, 'before', 'refusal', 'failure');
    void this.#refine(input, choice, how.phase);
    return true;
  }

  /** Reads the text again; the levers stay where they were as far as the new brief allows. */
  async read(): Promise<void> {
    const turn = ++this.#reading;
    let brief: BriefState;
    try {
      brief = await readText(this.#store.state().text);
    } catch {
      if (turn === this.#reading) this.#store.set({ failure: COMPUTING_WORDS.notLoaded });
      return;
    }
    if (turn !== this.#reading) return;
    if (brief.kind !== 'sound') {
      this.#store.set({ brief, isSearching: false, areDetailsPending: false }, 'failure', 'before');
      return;
    }
    this.#store.set({ brief }, 'failure', 'before');
    const { choice } = this.#store.state();
    if (!choice || !this.stand(choice, { phase: 'settled' }))
      this.#store.set({ areDetailsPending: false }, 'candidate', 'details', 'choice', 'refusal');
    await this.#search(brief.input);
  }

  #sound(): SearchInput | undefined {
    const { brief } = this.#store.state();
    return brief.kind === 'sound' ? brief.input : undefined;
  }

  async #refine(input: SearchInput, choice: Choice, phase: 'moving' | 'settled'): Promise<void> {
    const isStill = (): boolean => this.#store.state().choice === choice && this.#sound() === input;
    // While a lever is on its way every frame belongs to the drawing; the old figures stay, shown as pending.
    if (phase === 'moving') await rest();
    if (!isStill()) return;
    try {
      const details = await this.#computing.worker.details(input, choice);
      if (details && isStill()) this.#store.set({ details, areDetailsPending: false });
    } catch (error) {
      // Figures of an older setting would be taken for those of this one.
      if (isStill()) this.#store.set({ areDetailsPending: false, failure: failureOf(error) }, 'details');
    }
  }

  async #search(input: SearchInput): Promise<void> {
    this.#store.set({ isSearching: true });
    try {
      const design = await this.#computing.worker.search(input);
      if (!design || this.#sound() !== input) return;
      this.#store.set({ design, isSearching: false });
      const [first] = design.candidates;
      if (!this.#store.state().candidate && first)
        this.stand({ size: first.size, method: first.method, settings: first.settings }, { phase: 'settled' });
    } catch (error) {
      if (this.#sound() === input) this.#store.set({ isSearching: false, failure: failureOf(error) });
    }
  }
}

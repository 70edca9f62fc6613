import type { ValuePath } from '@fillwright/contract/files';
import { DomainError } from '@fillwright/engine/catalogue';
import { candidateAt, placesOf, type Candidate, type Place, type SearchInput } from '@fillwright/engine/design';
import type { Settings } from '@fillwright/engine/dosing';
import { domainErrorSentence } from '@fillwright/words/en';
import { keeperOf, type Keeper, type KeeperNews } from './autosave.ts';
import { startDesignWorker, type DesignWorker } from './design-calls.ts';
import { documentChoice, openChoice } from './design-document.ts';
import { newestVersion } from './documents-client.ts';
import { emitter } from './emitter.ts';
import { forgetText, keepText, keptText } from './kept-text.ts';
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

function createWorkbench(): Workbench {
  const store = emitter<WorkbenchState>(EMPTY);
  let worker: DesignWorker | undefined;
  let steps: Steps = NO_STEPS;
  let keepers: { brief: Keeper; design: Keeper } | undefined;
  let places: { input: SearchInput; list: readonly Place[] } | undefined;
  let reading = 0;

  const state = store.get;
  const set = (change: Partial<WorkbenchState>): void => {
    store.set({ ...state(), ...change, canUndo: steps.past.length > 0, canRedo: steps.future.length > 0 });
  };
  const sound = (): SearchInput | undefined => {
    const { brief } = state();
    return brief.kind === 'sound' ? brief.input : undefined;
  };
  const now = (): Step => {
    const { text, choice } = state();
    return choice ? { text, choice } : { text };
  };

  function placeOf(input: SearchInput, { size, method }: Pick<Choice, 'size' | 'method'>): Place | undefined {
    if (places?.input !== input) places = { input, list: placesOf(input).places };
    return places.list.find((place) => place.record.size === size && place.method.id === method);
  }

  function candidateOf(input: SearchInput, choice: Choice): Candidate | string {
    const place = placeOf(input, choice);
    if (!place) return domainErrorSentence('no-geometry', { size: choice.size });
    try {
      return candidateAt(input, place, choice.settings);
    } catch (error) {
      if (error instanceof DomainError) return domainErrorSentence(error.code, error.facts);
      throw error;
    }
  }

  /** The levers stand at `choice`; what is dear follows from the worker. */
  function stand(choice: Choice, phase: 'moving' | 'settled'): void {
    const input = sound();
    if (!input) return;
    const found = candidateOf(input, choice);
    if (typeof found === 'string') {
      set({ refusal: found });
      return;
    }
    const { candidate: last, before, refusal: _, ...rest } = state();
    const old = before ?? last;
    store.set(phase === 'moving' && old ? { ...rest, before: old } : rest);
    set({ choice, candidate: found, areDetailsPending: true });
    if (phase === 'settled') keepers?.design.touch(documentChoice(choice, keepers.brief.version()));
    void refine(input, choice);
  }

  async function refine(input: SearchInput, choice: Choice): Promise<void> {
    const details = await (worker ??= startDesignWorker()).details(input, choice);
    if (details && state().choice === choice) set({ details, areDetailsPending: false });
  }

  async function research(input: SearchInput): Promise<void> {
    set({ isSearching: true });
    const design = await (worker ??= startDesignWorker()).search(input);
    if (!design || sound() !== input) return;
    set({ design, isSearching: false });
    const [first] = design.candidates;
    if (!state().candidate && first) stand(first, 'settled');
  }

  /** Reads the text again; the levers stay where they were as far as the new brief allows. */
  async function read(): Promise<void> {
    const turn = ++reading;
    const brief: BriefState = await readText(state().text);
    if (turn !== reading) return;
    set({ brief });
    if (brief.kind !== 'sound') return;
    const { choice } = state();
    if (choice && typeof candidateOf(brief.input, choice) !== 'string') stand(choice, 'settled');
    else {
      const { candidate: _, details: __, choice: ___, ...rest } = state();
      store.set(rest);
    }
    await research(brief.input);
  }

  function changeText(text: string): void {
    if (text === state().text) return;
    steps = stepped(steps, now());
    applyText(text);
  }

  function applyText(text: string): void {
    const { id } = state();
    set({ text });
    if (id !== undefined) keepText(id, { text, basedOn: keepers?.brief.version() ?? 0 });
    keepers?.brief.touch(text);
    void read();
  }

  function goTo(found: { to: Step; steps: Steps } | undefined): void {
    if (!found) return;
    steps = found.steps;
    if (found.to.choice) set({ choice: found.to.choice });
    if (found.to.text !== state().text) applyText(found.to.text);
    else if (found.to.choice) stand(found.to.choice, 'settled');
  }

  function hear(id: string): (news: KeeperNews) => void {
    return (news) => {
      if (state().id !== id) return;
      if (news.kind === 'kept') {
        if (state().text === news.text) forgetText(id);
        set({ save: { kind: state().text === news.text ? 'kept' : 'pending', version: news.version } });
      } else set({ save: news });
    };
  }

  function watch(at: {
    id: string;
    version: number;
    keptText: string;
    designVersion: number;
    designText: string;
  }): void {
    keepers?.brief.stop();
    keepers?.design.stop();
    const { id } = at;
    keepers = {
      brief: keeperOf({ kind: 'brief', id, version: at.version, text: at.keptText }, hear(id)),
      design: keeperOf({ kind: 'design', id, version: at.designVersion, text: at.designText }, () => undefined),
    };
  }

  async function open(id: string): Promise<void> {
    if (state().id === id) return;
    steps = NO_STEPS;
    const mine = keptText(id);
    store.set({ ...EMPTY, id });
    const newest = await newestVersion('brief', id).catch((error: unknown) => {
      if (mine) return undefined;
      throw error;
    });
    const design = await openChoice(id);
    const version = newest?.version ?? mine?.basedOn ?? 0;
    watch({
      id,
      version,
      keptText: newest?.text ?? '',
      designVersion: design?.version ?? 0,
      designText: design?.text ?? '',
    });
    const text = mine?.text ?? newest?.text ?? '';
    set({ text, save: { kind: 'kept', version }, ...(design ? { choice: design.choice } : {}) });
    if (mine && newest && mine.text !== newest.text && mine.basedOn < newest.version)
      set({ save: { kind: 'conflict', current: newest, yours: mine.text } });
    else if (mine && mine.text !== newest?.text) keepers?.brief.touch(mine.text);
    await read();
  }

  return {
    state,
    subscribe: store.subscribe,
    open,
    create: async (text) => {
      const id = await productId(text);
      steps = NO_STEPS;
      keepText(id, { text, basedOn: 0 });
      store.set({ ...EMPTY, id });
      watch({ id, version: 0, keptText: '', designVersion: 0, designText: '' });
      set({ text, save: { kind: 'pending', version: 0 } });
      keepers?.brief.touch(text);
      await Promise.all([keepers?.brief.send('draft'), read()]);
      return id;
    },
    setText: changeText,
    setValue: (path, value) => {
      void import('@fillwright/contract/files').then(({ changedText }) => {
        changeText(changedText(state().text, path, value));
      });
    },
    move: (settings, phase) => {
      const { choice, before } = state();
      if (!choice) return;
      if (!before) steps = stepped(steps, now());
      stand({ ...choice, settings }, phase);
    },
    take: (rank) => {
      const found = state().design?.candidates.find((candidate) => candidate.rank === rank);
      if (!found) return;
      steps = stepped(steps, now());
      stand({ size: found.size, method: found.method, settings: found.settings }, 'settled');
    },
    undo: () => {
      goTo(undone(steps, now()));
    },
    redo: () => {
      goTo(redone(steps, now()));
    },
    saveDesign: async (reason) => {
      if (!keepers) return 'refused';
      const brief = await keepers.brief.send('saved', reason);
      if (brief !== 'kept') return brief;
      const { choice } = state();
      if (!choice) return 'kept';
      keepers.design.touch(documentChoice(choice, keepers.brief.version()));
      return keepers.design.send('saved', reason);
    },
    resolve: (side) => {
      const { save, id } = state();
      if (save.kind !== 'conflict' || id === undefined) return;
      keepers?.brief.baseOn(save.current.version);
      set({ save: { kind: 'pending', version: save.current.version } });
      if (side === 'mine') keepers?.brief.touch(state().text);
      else {
        steps = stepped(steps, now());
        applyText(save.current.text);
      }
    },
  };
}

export const workbench = createWorkbench();

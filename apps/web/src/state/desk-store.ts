import { emitter } from './emitter.ts';
import { NO_STEPS, redone, stepped, undone, type Step, type Steps } from './steps.ts';
import type { WorkbenchState } from './workbench-state.ts';

const EMPTY: WorkbenchState = {
  text: '',
  brief: { kind: 'reading' },
  save: { kind: 'kept', version: 0 },
  choiceSave: { kind: 'kept', version: 0 },
  restedOn: [],
  isKeptHere: true,
  isSearching: false,
  areDetailsPending: false,
  canUndo: false,
  canRedo: false,
};

/** Parts of the state that can be absent. */
type Optional = 'before' | 'candidate' | 'details' | 'choice' | 'failure' | 'refusal';

/** What the pages show, and the steps that lead back. */
export class DeskStore {
  readonly #emitter = emitter<WorkbenchState>(EMPTY);
  #steps: Steps = NO_STEPS;

  readonly state = this.#emitter.get;
  readonly subscribe = this.#emitter.subscribe;

  /** Another product: nothing of the last one stays. */
  begin(id: string, isKeptHere: boolean): void {
    this.#steps = NO_STEPS;
    this.#emitter.set({ ...EMPTY, id, isKeptHere });
  }

  /** Changes what is given and leaves out what is named. */
  set(change: Partial<WorkbenchState>, ...dropped: readonly Optional[]): void {
    const rest: Record<string, unknown> = { ...this.state() };
    for (const key of dropped) Reflect.deleteProperty(rest, key);
    const { past, future } = this.#steps;
    const canGo = { canUndo: past.length > 0, canRedo: future.length > 0 };
    this.#emitter.set({ ...(rest as unknown as WorkbenchState), ...change, ...canGo });
  }

  now(): Step {
    const { text, choice } = this.state();
    return choice ? { text, choice } : { text };
  }

  /** What is about to change can be undone. */
  step(change: Partial<Step>): void {
    const before = this.now();
    this.#steps = stepped(this.#steps, { before, after: { ...before, ...change }, at_ms: Date.now() });
  }

  /** One step back or forth. @returns where to go; undefined when there is none */
  go(way: 'back' | 'forth'): Step | undefined {
    const found = way === 'back' ? undone(this.#steps, this.now()) : redone(this.#steps, this.now());
    if (found) this.#steps = found.steps;
    return found?.to;
  }
}

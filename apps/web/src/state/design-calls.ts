import type { CandidateDetails, Design, SearchInput } from '@fillwright/engine/design';
import type { Choice } from './workbench-state.ts';

/** What the page asks of the worker. */
export type DesignCall =
  | { readonly id: number; readonly kind: 'search'; readonly input: SearchInput }
  | { readonly id: number; readonly kind: 'details'; readonly input: SearchInput; readonly choice: Choice };

/** What the worker answers; a refusal is a sentence for developers. */
export type DesignAnswer =
  | { readonly id: number; readonly kind: 'search'; readonly design: Design }
  | { readonly id: number; readonly kind: 'details'; readonly details: CandidateDetails }
  | { readonly id: number; readonly kind: 'refused'; readonly why: string };

export interface DesignWorker {
  /** Searches; a newer search makes an older one come back undefined. */
  readonly search: (input: SearchInput) => Promise<Design | undefined>;
  /** Computes details; only the newest call matters: older ones that have not begun come back undefined. */
  readonly details: (input: SearchInput, choice: Choice) => Promise<CandidateDetails | undefined>;
}

/**
 * The worker that searches and computes what is too dear for a frame.
 *
 * @returns its calls
 */
export function startDesignWorker(): DesignWorker {
  const worker = new Worker(new URL('./design-worker.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, (answer: DesignAnswer) => void>();
  worker.addEventListener('message', ({ data }: MessageEvent<DesignAnswer>) => {
    waiting.get(data.id)?.(data);
    waiting.delete(data.id);
  });
  let last = 0;
  const ask = (
    call: { kind: 'search'; input: SearchInput } | { kind: 'details'; input: SearchInput; choice: Choice },
  ): Promise<DesignAnswer> => {
    const id = ++last;
    return new Promise((resolve) => {
      waiting.set(id, resolve);
      worker.postMessage({ ...call, id });
    });
  };
  const newest = { search: 0, details: 0 };
  let lane: Promise<unknown> = Promise.resolve();
  /** One call at a time: while the worker is busy only the newest of a kind is sent on. */
  const inLane = async (
    kind: 'search' | 'details',
    work: () => Promise<DesignAnswer>,
  ): Promise<DesignAnswer | undefined> => {
    const turn = ++newest[kind];
    const before = lane;
    const mine = (async () => {
      await before;
      if (turn !== newest[kind]) return undefined;
      const answer = await work();
      return turn === newest[kind] ? answer : undefined;
    })();
    lane = mine.catch(() => undefined);
    return mine;
  };
  return {
    search: async (input) => {
      const answer = await inLane('search', () => ask({ kind: 'search', input }));
      return answer?.kind === 'search' ? answer.design : undefined;
    },
    details: async (input, choice) => {
      const answer = await inLane('details', () => ask({ kind: 'details', input, choice }));
      return answer?.kind === 'details' ? answer.details : undefined;
    },
  };
}

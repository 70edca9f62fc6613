import type { DomainError } from '@fillwright/engine/catalogue';
import type { CandidateDetails, Design, SearchInput } from '@fillwright/engine/design';
import { COMPUTING_WORDS, domainErrorSentence } from '@fillwright/words/en';
import type { Choice } from './workbench-state.ts';

/** What is asked, without its number. */
type Question =
  | { readonly kind: 'search'; readonly input: SearchInput }
  | { readonly kind: 'details'; readonly input: SearchInput; readonly choice: Choice };

/** What the page asks of the worker. */
export type DesignCall = Question & { readonly id: number };

/** What the worker answers; `broken`: something in it failed that nobody foresaw. */
export type DesignAnswer =
  | { readonly id: number; readonly kind: 'search'; readonly design: Design }
  | { readonly id: number; readonly kind: 'details'; readonly details: CandidateDetails }
  | {
      readonly id: number;
      readonly kind: 'refused';
      readonly code: DomainError['code'];
      readonly facts: DomainError['facts'];
    }
  | { readonly id: number; readonly kind: 'broken' };

/** Nothing was computed; the message is a sentence for the person. */
export class NotComputed extends Error {}

export interface DesignWorker {
  /** Searches; a newer search makes an older one come back undefined. @throws NotComputed */
  readonly search: (input: SearchInput) => Promise<Design | undefined>;
  /** Computes details; older calls that have not begun come back undefined. @throws NotComputed */
  readonly details: (input: SearchInput, choice: Choice) => Promise<CandidateDetails | undefined>;
}

/** What is used of a `Worker`. */
export type WorkerThread = Pick<Worker, 'addEventListener' | 'postMessage' | 'terminate'>;

const ownThread = (): WorkerThread => new Worker(new URL('./design-worker.ts', import.meta.url), { type: 'module' });

/**
 * The worker that searches and computes what is too dear for a frame. One that breaks is replaced with the next call.
 *
 * @param start - starts a thread
 * @returns its calls
 */
export function startDesignWorker(start: () => WorkerThread = ownThread): DesignWorker {
  const ask = askedOf(start);
  const newest = { search: 0, details: 0 };
  let lane: Promise<unknown> = Promise.resolve();
  /** One call at a time: while the worker is busy only the newest of a kind is sent on. */
  const inLane = async (question: Question): Promise<DesignAnswer | undefined> => {
    const { kind } = question;
    const turn = ++newest[kind];
    const before = lane;
    const mine = (async () => {
      await before;
      if (turn !== newest[kind]) return undefined;
      const answer = await ask(question);
      return turn === newest[kind] ? answer : undefined;
    })();
    lane = mine.catch(() => undefined);
    const answer = await mine;
    if (answer?.kind === 'refused') throw new NotComputed(domainErrorSentence(answer.code, answer.facts));
    if (answer?.kind === 'broken') throw new NotComputed(COMPUTING_WORDS.broken);
    return answer;
  };
  return {
    search: async (input) => {
      const answer = await inLane({ kind: 'search', input });
      return answer?.kind === 'search' ? answer.design : undefined;
    },
    details: async (input, choice) => {
      const answer = await inLane({ kind: 'details', input, choice });
      return answer?.kind === 'details' ? answer.details : undefined;
    },
  };
}

/** Asks the thread; when it breaks, whoever waits hears of it and the next question gets another thread. */
function askedOf(start: () => WorkerThread): (question: Question) => Promise<DesignAnswer> {
  const waiting = new Map<number, (answer: DesignAnswer) => void>();
  let thread: WorkerThread | undefined;
  let last = 0;
  const answered = (answer: DesignAnswer): void => {
    waiting.get(answer.id)?.(answer);
    waiting.delete(answer.id);
  };
  const broken = (): void => {
    thread?.terminate();
    thread = undefined;
    for (const id of [...waiting.keys()]) answered({ id, kind: 'broken' });
  };
  const begun = (): WorkerThread => {
    const next = start();
    next.addEventListener('message', ({ data }: MessageEvent<DesignAnswer>) => {
      answered(data);
    });
    next.addEventListener('error', broken);
    next.addEventListener('messageerror', broken);
    return next;
  };
  return (question) =>
    new Promise((resolve) => {
      const id = ++last;
      waiting.set(id, resolve);
      try {
        (thread ??= begun()).postMessage({ ...question, id });
      } catch {
        broken();
      }
    });
}

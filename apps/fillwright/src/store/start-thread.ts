import { Worker } from 'node:worker_threads';
import type { Answer, Asked, Reply } from './embedded-protocol.ts';
import { StoreError } from './store-error.ts';

// Node 20 runs no TypeScript: the thread always starts from the built file, in tests too. src and dist are equally deep.
const WORKER = new URL('../../dist/store/embedded-worker.js', import.meta.url);

/** Opening may replay the journal after a kill; 6.4 s were measured, a slow disk takes longer. */
const PATIENCE_TO_OPEN_s = 120;

export interface Thread {
  /** Asks the embedded database; an error of it is thrown with its code. */
  readonly ask: (asked: Asked) => Promise<Exclude<Answer, { error: unknown }>>;
  readonly end: () => Promise<void>;
  /** Syncs that reached the disk since the store was opened. */
  readonly syncCount: () => number;
}

interface Waiting {
  readonly resolve: (answer: Exclude<Answer, { error: unknown }>) => void;
  readonly reject: (error: Error) => void;
  readonly timer: NodeJS.Timeout;
}

/**
 * Starts the thread of the embedded database and watches it: when no answer comes, it is ended and every call fails.
 *
 * @param options - folder of the database; place: how a person knows it; patience_s: longest wait for an answer
 * @returns the thread, with the database open
 * @throws StoreError "no-answer", or the error of the database when it does not open
 */
export async function startThread(options: { folder: string; place: string; patience_s: number }): Promise<Thread> {
  const { folder, place, patience_s } = options;
  const worker = new Worker(WORKER, { workerData: folder });
  const waiting = new Map<number, Waiting>();
  let last = 0;
  let syncCount = 0;
  let over: Error | undefined;

  const fail = (error: Error): void => {
    over ??= error;
    for (const { reject, timer } of waiting.values()) {
      clearTimeout(timer);
      reject(over);
    }
    waiting.clear();
  };
  const wait = (number: number, longest_s: number): ReturnType<Thread['ask']> =>
    new Promise((resolve, reject) => {
      const timer = setTimeout(() => {
        fail(new StoreError('no-answer', { place, patience_s: longest_s }));
        void worker.terminate();
      }, longest_s * 1000);
      waiting.set(number, { resolve, reject, timer });
    });
  worker.on('message', ({ number, answer, syncCount: count }: Reply) => {
    syncCount = count;
    const call = waiting.get(number);
    if (!call) return;
    waiting.delete(number);
    clearTimeout(call.timer);
    if ('error' in answer) call.reject(Object.assign(new Error(answer.error.message), answer.error));
    else call.resolve(answer);
  });
  worker.on('error', fail);
  worker.on('exit', () => {
    fail(new StoreError('closed', { place }));
  });

  try {
    await wait(0, PATIENCE_TO_OPEN_s);
  } catch (error) {
    await worker.terminate();
    throw error;
  }
  return {
    ask: (asked) => {
      if (over) return Promise.reject(over);
      const answer = wait(++last, patience_s);
      worker.postMessage({ number: last, asked });
      return answer;
    },
    end: async () => {
      await worker.terminate();
    },
    syncCount: () => syncCount,
  };
}

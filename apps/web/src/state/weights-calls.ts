import type { DomainError } from '@fillwright/engine/catalogue';
import type { LimitCard } from '@fillwright/engine/design';
import type { WeightsInput, WeightsJudgement } from '@fillwright/engine/weights';
import type { WeightsRead, WeightsText } from '@fillwright/contract/weights';
import type { WorkerThread } from './design-calls.ts';

/** What is known besides the weights themselves. */
export type WeightsFacts = Omit<WeightsInput, 'capsules' | 'basis' | 'shells_mg' | 'unreadCount'>;

/** Texts to read and to judge. */
export interface WeightsQuestion {
  /** Left out while nothing is pasted. */
  readonly weights?: WeightsText;
  /** Empty shells of the lot, if any were pasted. */
  readonly shells?: WeightsText;
  readonly facts: WeightsFacts;
}

/** What the texts say. */
export interface WeightsAnswer {
  readonly read?: WeightsRead;
  readonly shellsRead?: WeightsRead;
  /** Left out while something cannot be read or judged. */
  readonly judgement?: WeightsJudgement;
  /** Of the shells alone, before a capsule is weighed. */
  readonly card?: LimitCard;
  readonly refused?: { readonly code: DomainError['code']; readonly facts: DomainError['facts'] };
}

export type WeightsCall = WeightsQuestion & { readonly id: number };
export type WeightsReply = WeightsAnswer & { readonly id: number };

/** Reads and judges in a thread of its own: ten thousand weights hold up no key. */
export class WeightsThread {
  readonly #heard: (answer: WeightsAnswer | 'broken') => void;
  readonly #start: () => WorkerThread;
  #thread: WorkerThread | undefined;
  #last = 0;
  #isBusy = false;
  /** The newest question while another is being answered; those between are never asked. */
  #waiting: WeightsCall | undefined;

  constructor(heard: (answer: WeightsAnswer | 'broken') => void, start: () => WorkerThread = ownThread) {
    this.#heard = heard;
    this.#start = start;
  }

  /** Asks; only the answer to the newest question is heard. */
  ask(question: WeightsQuestion): void {
    this.#waiting = { ...question, id: ++this.#last };
    if (!this.#isBusy) this.#next();
  }

  close(): void {
    this.#thread?.terminate();
    this.#thread = undefined;
    this.#isBusy = false;
    this.#waiting = undefined;
  }

  #next(): void {
    const call = this.#waiting;
    if (!call) return;
    this.#waiting = undefined;
    this.#isBusy = true;
    this.#thread ??= this.#begun();
    this.#thread.postMessage(call);
  }

  #begun(): WorkerThread {
    const thread = this.#start();
    thread.addEventListener('message', ({ data }: MessageEvent<WeightsReply>) => {
      this.#isBusy = false;
      if (data.id === this.#last) this.#heard(data);
      this.#next();
    });
    const broken = (): void => {
      this.close();
      this.#heard('broken');
    };
    thread.addEventListener('error', broken);
    thread.addEventListener('messageerror', broken);
    return thread;
  }
}

const ownThread = (): WorkerThread => new Worker(new URL('./weights-worker.ts', import.meta.url), { type: 'module' });

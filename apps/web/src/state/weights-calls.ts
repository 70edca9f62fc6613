import type { DomainError } from '@fillwright/engine/catalogue';
import type { WeightsInput, WeightsJudgement } from '@fillwright/engine/weights';
import type { WeightsRead, WeightsText } from '@fillwright/contract/weights';

/** What is known besides the weights themselves. */
export interface WeightsFacts extends Omit<WeightsInput, 'capsules' | 'basis' | 'shells_mg' | 'unreadCount'> {
  /** Contents of `substances` belong to capsules of this net mass, and go with the mean; left out: to the mean found. */
  readonly contentAt_mg?: number;
}

/** Texts to read and to judge. */
export interface WeightsQuestion {
  readonly weights: WeightsText;
  /** Empty shells of the lot, if any were pasted. */
  readonly shells?: WeightsText;
  readonly facts: WeightsFacts;
}

/** What the texts say. */
export interface WeightsAnswer {
  readonly read: WeightsRead;
  readonly shellsRead?: WeightsRead;
  /** Left out while something cannot be read or judged. */
  readonly judgement?: WeightsJudgement;
  readonly refused?: { readonly code: DomainError['code']; readonly facts: DomainError['facts'] };
}

export type WeightsCall = WeightsQuestion & { readonly id: number };
export type WeightsReply = WeightsAnswer & { readonly id: number };

/** Reads and judges in a thread of its own: ten thousand weights hold up no key. */
export class WeightsThread {
  readonly #heard: (answer: WeightsAnswer | 'broken') => void;
  #thread: Worker | undefined;
  #last = 0;

  constructor(heard: (answer: WeightsAnswer | 'broken') => void) {
    this.#heard = heard;
  }

  /** Asks; only the answer to the newest question is heard. */
  ask(question: WeightsQuestion): void {
    const call: WeightsCall = { ...question, id: ++this.#last };
    this.#thread ??= this.#begun();
    this.#thread.postMessage(call);
  }

  close(): void {
    this.#thread?.terminate();
    this.#thread = undefined;
  }

  #begun(): Worker {
    const thread = new Worker(new URL('./weights-worker.ts', import.meta.url), { type: 'module' });
    thread.addEventListener('message', ({ data }: MessageEvent<WeightsReply>) => {
      if (data.id === this.#last) this.#heard(data);
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

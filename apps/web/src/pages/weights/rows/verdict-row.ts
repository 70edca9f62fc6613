import type { Said } from '../numbers/said.ts';

/** One thing that was judged: what, how it stands, and the arithmetic. */
export interface VerdictRow {
  readonly key: string;
  readonly title: Said;
  readonly badge: string;
  readonly isAct: boolean;
  readonly lines: readonly Said[];
  readonly source?: string;
}

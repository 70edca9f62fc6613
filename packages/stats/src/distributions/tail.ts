/** Which side a probability is counted from: `lower` is P(X <= x), `upper` is P(X > x). */
export type Tail = 'lower' | 'upper';

/** Both probabilities of one point; the smaller one keeps its relative accuracy. */
export interface Tails {
  readonly lower: number;
  readonly upper: number;
}

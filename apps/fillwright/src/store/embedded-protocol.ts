/** What the thread of the embedded store is asked. */
export type Asked =
  | { readonly kind: 'query'; readonly text: string; readonly parameters: readonly unknown[] }
  | { readonly kind: 'dump' }
  | { readonly kind: 'close' };

/** What it answers: rows, the whole store as one compressed file, or an error. */
export type Answer =
  | { readonly rows: readonly unknown[] }
  | { readonly dump: Uint8Array }
  | { readonly error: { readonly message: string; readonly code?: string } };

/** A message to the thread. */
export interface Question {
  readonly number: number;
  readonly asked: Asked;
}

/** A message from the thread; 0 says that the store is open, or why it is not. `syncCount`: syncs since then. */
export interface Reply {
  readonly number: number;
  readonly answer: Answer;
  readonly syncCount: number;
}

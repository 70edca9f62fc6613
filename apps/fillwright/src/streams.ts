/** Where a command writes: results, and problems. One call is one line or block of lines. */
export interface Streams {
  readonly out: (text: string) => void;
  readonly problem: (text: string) => void;
}

/** A piece of an equation, independent of how it is written or shown. */
export type MathNode =
  /** A letter or a name of several letters. */
  | { readonly kind: 'name'; readonly text: string }
  | { readonly kind: 'number'; readonly text: string; readonly isPutIn?: true }
  /** Operators, relations, brackets, commas. */
  | { readonly kind: 'sign'; readonly text: string }
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'space'; readonly em: number }
  | { readonly kind: 'row'; readonly parts: readonly MathNode[] }
  | { readonly kind: 'fraction'; readonly over: MathNode; readonly under: MathNode }
  | { readonly kind: 'root'; readonly under: MathNode }
  | { readonly kind: 'bar'; readonly over: MathNode }
  | { readonly kind: 'scripts'; readonly base: MathNode; readonly sub?: MathNode; readonly sup?: MathNode }
  /** A pair of brackets that grows with what it holds. */
  | { readonly kind: 'brackets'; readonly open: string; readonly close: string; readonly inside: MathNode }
  /** Equations under each other. */
  | { readonly kind: 'lines'; readonly lines: readonly MathNode[] };

/** A row of one is that one. */
export function rowOf(parts: readonly MathNode[]): MathNode {
  const [only] = parts;
  return parts.length === 1 && only ? only : { kind: 'row', parts };
}

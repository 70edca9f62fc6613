import { createElement, type ReactNode } from 'react';
import { mathOf } from './math-of.tsx';
import type { MathNode } from './math-node.ts';

/** One letter with its subscript, from its spelling (`ρ_0`, `bar t`). */
export function MathSymbol({ symbol }: { readonly symbol: string }): ReactNode {
  return createElement('math', {}, mathOf(nodeOf(symbol)));
}

function nodeOf(symbol: string): MathNode {
  if (symbol.startsWith('bar ')) return { kind: 'bar', over: nodeOf(symbol.slice(4)) };
  const [base = symbol, sub] = symbol.split('_');
  const letter: MathNode = { kind: 'name', text: base };
  if (sub === undefined) return letter;
  const below: MathNode = { kind: /^\d+$/.test(sub) ? 'number' : 'name', text: sub };
  return { kind: 'scripts', base: letter, sub: below };
}

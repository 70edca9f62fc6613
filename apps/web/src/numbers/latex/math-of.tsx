import { createElement, type ReactNode } from 'react';
import type { MathNode } from './math-node.ts';

/** Brackets that stay as high as a letter; only those between `\left` and `\right` grow. */
const STEADY: readonly string[] = ['(', ')', '[', ']', '{', '}', '|', '⌈', '⌉', '⌊', '⌋', '∣', '/'];
/** A constant of mathematics is upright (ISO 80000-2, from memory). */
const UPRIGHT: readonly string[] = ['π'];

/**
 * An equation as MathML elements.
 *
 * @param node - the equation or a piece of it
 * @param key - place among its siblings
 * @returns the element
 */
export function mathOf(node: MathNode, key?: number): ReactNode {
  const make = ELEMENTS[node.kind] as (node: MathNode, at: Place) => ReactNode;
  return make(node, key === undefined ? {} : { key });
}

interface Place {
  readonly key?: number;
}

const ELEMENTS: {
  readonly [Kind in MathNode['kind']]: (node: Extract<MathNode, { kind: Kind }>, at: Place) => ReactNode;
} = {
  name: ({ text }, at) =>
    createElement('mi', { ...at, ...(UPRIGHT.includes(text) ? { mathvariant: 'normal' } : {}) }, text),
  number: ({ text, isPutIn }, at) =>
    createElement('mn', { ...at, ...(isPutIn ? { className: 'equation-number' } : {}) }, text),
  sign: ({ text }, at) => createElement('mo', { ...at, ...(STEADY.includes(text) ? { stretchy: 'false' } : {}) }, text),
  words: ({ text }, at) => createElement('mtext', at, text),
  space: ({ em }, at) => createElement('mspace', { ...at, width: `${em}em` }),
  row: ({ parts }, at) => createElement('mrow', at, parts.map(mathOf)),
  fraction: ({ over, under }, at) => createElement('mfrac', at, mathOf(over, 0), mathOf(under, 1)),
  root: ({ under }, at) => createElement('msqrt', at, mathOf(under)),
  bar: ({ over }, at) =>
    createElement('mover', { ...at, accent: 'true' }, mathOf(over, 0), createElement('mo', { key: 1 }, '¯')),
  scripts: ({ base, sub, sup }, at) => {
    if (sub && sup) return createElement('msubsup', at, mathOf(base, 0), mathOf(sub, 1), mathOf(sup, 2));
    const script = sub ?? sup;
    return createElement(sub ? 'msub' : 'msup', at, mathOf(base, 0), script && mathOf(script, 1));
  },
  brackets: ({ open, close, inside }, at) =>
    createElement('mrow', at, bracket(open, 0), mathOf(inside, 1), bracket(close, 2)),
  lines: ({ lines }, at) =>
    createElement(
      'mtable',
      at,
      lines.map((line, i) => createElement('mtr', { key: i }, createElement('mtd', {}, mathOf(line)))),
    ),
};

function bracket(text: string, key: number): ReactNode {
  return createElement('mo', { key }, text);
}

import type { MathNode } from './math-node.ts';

/**
 * The plain spelling of a letter with its subscript, to look it up by: `ρ_0`, `m_k-1`, `bar X`.
 *
 * @param node - any piece
 * @returns the spelling; undefined when the piece is no letter
 */
export function symbolText(node: MathNode): string | undefined {
  switch (node.kind) {
    case 'name':
      return node.text;
    case 'bar': {
      const inner = symbolText(node.over);
      return inner === undefined ? undefined : `bar ${inner}`;
    }
    case 'scripts': {
      const base = symbolText(node.base);
      if (base === undefined || !node.sub || node.sup) return undefined;
      return `${base}_${flat(node.sub)}`;
    }
    default:
      return undefined;
  }
}

/** All signs of a subscript, spaces left out. */
function flat(node: MathNode): string {
  switch (node.kind) {
    case 'row':
      return node.parts.map(flat).join('');
    case 'name':
    case 'number':
    case 'sign':
    case 'words':
      return node.text;
    default:
      return symbolText(node) ?? '';
  }
}

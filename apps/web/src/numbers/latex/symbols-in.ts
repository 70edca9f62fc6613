import type { MathNode } from './math-node.ts';
import { symbolText } from './symbol-text.ts';

/**
 * Every letter of an equation, spelt as `symbolText` does.
 *
 * @param node - the equation
 * @returns the letters, each once
 */
export function symbolsIn(node: MathNode): ReadonlySet<string> {
  const found = new Set<string>();
  collect(node, found);
  return found;
}

function collect(node: MathNode, found: Set<string>): void {
  const symbol = symbolText(withoutPower(node));
  if (symbol !== undefined) found.add(symbol);
  else for (const part of partsOf(node)) collect(part, found);
}

function partsOf(node: MathNode): readonly MathNode[] {
  switch (node.kind) {
    case 'row':
      return node.parts;
    case 'fraction':
      return [node.over, node.under];
    case 'root':
      return [node.under];
    case 'bar':
      return [node.over];
    case 'brackets':
      return [node.inside];
    case 'lines':
      return node.lines;
    case 'scripts':
      return [node.base, ...(node.sup ? [node.sup] : [])];
    default:
      return [];
  }
}

/** `x_i^2` holds the letter `x_i`. */
function withoutPower(node: MathNode): MathNode {
  return node.kind === 'scripts' && node.sub ? { kind: 'scripts', base: node.base, sub: node.sub } : node;
}

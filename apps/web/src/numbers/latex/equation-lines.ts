import { rowOf, type MathNode } from './math-node.ts';

/** An equation in three columns: what stands before its first relation, the relation, what follows. */
export interface EquationLine {
  readonly left: MathNode;
  readonly relation?: string;
  readonly right?: MathNode;
}

const RELATIONS: readonly string[] = ['=', '≤', '<', '∼'];
/** A space this wide parts two equations. */
const PARTING_em = 1;

/**
 * Parts what the catalogue writes in one line into its equations, so that they can stand under each other.
 *
 * @param equation - as read
 * @returns one line each, at least one
 */
export function equationLines(equation: MathNode): readonly EquationLine[] {
  if (equation.kind === 'lines') return equation.lines.flatMap(equationLines);
  const lines: MathNode[][] = [[]];
  for (const part of partsOf(equation)) {
    if (part.kind === 'space' && part.em >= PARTING_em) lines.push([]);
    else lines.at(-1)?.push(part);
  }
  return lines.map((parts, i) => lineOf(i < lines.length - 1 ? withoutComma(parts) : parts));
}

function partsOf(node: MathNode): readonly MathNode[] {
  return node.kind === 'row' ? node.parts : [node];
}

function withoutComma(parts: readonly MathNode[]): readonly MathNode[] {
  const last = parts.at(-1);
  return last?.kind === 'sign' && last.text === ',' ? parts.slice(0, -1) : parts;
}

function lineOf(parts: readonly MathNode[]): EquationLine {
  const at = parts.findIndex((part) => part.kind === 'sign' && RELATIONS.includes(part.text));
  const relation = parts[at];
  if (relation?.kind !== 'sign') return { left: rowOf(parts) };
  return { left: rowOf(parts.slice(0, at)), relation: relation.text, right: rowOf(parts.slice(at + 1)) };
}

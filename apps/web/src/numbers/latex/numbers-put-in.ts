import { rowOf, type MathNode } from './math-node.ts';
import { symbolText } from './symbol-text.ts';

/** Numbers as printed, by the spelling of their letter (`symbolText`). */
export type PrintedLetters = Readonly<Record<string, string>>;

const TIMES: MathNode = { kind: 'sign', text: '×' };
/** A number that is no plain row of digits needs brackets under a power and after another sign. */
const PLAIN = /^[\d.]+$/;

/**
 * The same equation with numbers in the place of their letters; between two factors of which one is a number that was put
 * in, a multiplication sign. Letters without a number stay.
 *
 * @param node - the equation
 * @param printed - numbers by letter
 * @returns the equation with its numbers
 */
export function numbersPutIn(node: MathNode, printed: PrintedLetters): MathNode {
  const symbol = symbolText(node);
  const text = symbol === undefined ? undefined : printed[symbol];
  if (text !== undefined) return { kind: 'number', text, isPutIn: true };
  const inside = (part: MathNode): MathNode => numbersPutIn(part, printed);
  switch (node.kind) {
    case 'row':
      return withTimes(node.parts.map(inside));
    case 'fraction':
      return { ...node, over: inside(node.over), under: inside(node.under) };
    case 'root':
      return { ...node, under: inside(node.under) };
    case 'bar':
      return { ...node, over: inside(node.over) };
    case 'brackets':
      return { ...node, inside: inside(node.inside) };
    case 'lines':
      return { ...node, lines: node.lines.map(inside) };
    case 'scripts':
      return scripts(node, printed);
    default:
      return node;
  }
}

/** `x_i^2`: the letter is base and subscript, the power stays. A letter with a subscript is never the bare letter. */
function scripts(node: Extract<MathNode, { kind: 'scripts' }>, printed: PrintedLetters): MathNode {
  const { base, sub, sup } = node;
  if (!sup) return node;
  const below: MathNode = sub ? { kind: 'scripts', base, sub } : base;
  const put = numbersPutIn(below, printed);
  const power = numbersPutIn(sup, printed);
  return put.kind === 'number' ? { kind: 'scripts', base: bracketed(put), sup: power } : { ...node, sup: power };
}

function bracketed(node: MathNode): MathNode {
  if (node.kind !== 'number' || PLAIN.test(node.text)) return node;
  return rowOf([{ kind: 'sign', text: '(' }, node, { kind: 'sign', text: ')' }]);
}

const FACTOR_STARTS: readonly string[] = ['(', '⌊', '⌈', '∑'];
const FACTOR_ENDS: readonly string[] = [')', '⌋', '⌉'];

/** Signs after which a factor may stand without a multiplication sign of its own. */
function isFactorEnd(part: MathNode): boolean {
  return part.kind === 'sign' ? FACTOR_ENDS.includes(part.text) : part.kind !== 'space' && part.kind !== 'words';
}

function isFactorStart(part: MathNode): boolean {
  return part.kind === 'sign' ? FACTOR_STARTS.includes(part.text) : isFactorEnd(part);
}

function withTimes(parts: readonly MathNode[]): MathNode {
  const found: MathNode[] = [];
  for (const part of parts) {
    const last = found.findLast(({ kind }) => kind !== 'space');
    const isNegative = part.kind === 'number' && part.isPutIn && part.text.startsWith('−');
    if (last && needsTimes(last, part)) {
      while (found.at(-1)?.kind === 'space') found.pop();
      found.push(TIMES);
    }
    found.push(isNegative && last?.kind === 'sign' && last.text !== '=' ? bracketed(part) : part);
  }
  return rowOf(found);
}

/** A function and its bracket (`C(n)`) are no product: a sign goes only where a number was put in. */
function needsTimes(last: MathNode, next: MathNode): boolean {
  return isFactorEnd(last) && isFactorStart(next) && (endsInNumber(last) || startsWithNumber(next));
}

function endsInNumber(node: MathNode): boolean {
  if (node.kind === 'scripts') return holdsNumber(node.base);
  return holdsNumber(node);
}

function startsWithNumber(node: MathNode): boolean {
  return node.kind === 'sign' ? false : holdsNumber(node);
}

function holdsNumber(node: MathNode): boolean {
  switch (node.kind) {
    case 'number':
      return node.isPutIn ?? false;
    case 'row':
      return node.parts.some(holdsNumber);
    case 'fraction':
      return holdsNumber(node.over) || holdsNumber(node.under);
    case 'root':
      return holdsNumber(node.under);
    case 'brackets':
      return false;
    case 'scripts':
      return holdsNumber(node.base);
    default:
      return false;
  }
}

import { FUNCTIONS, LETTERS, SIGNS, SPACES_em } from './latex-symbols.table.ts';
import { latexTokens, type LatexToken } from './latex-tokens.ts';
import { rowOf, type MathNode } from './math-node.ts';

/** A differential: upright d and its letter, two names although they touch. */
const DIFFERENTIAL = /^d[a-zA-Z]$/;

/**
 * Reads the subset of LaTeX that the catalogue writes. Letters that touch are one name (`CI`, `proud`).
 *
 * @param latex - an equation of the catalogue
 * @returns the equation
 * @throws Error for anything outside the subset: nothing is dropped in silence
 */
export function parseLatex(latex: string): MathNode {
  const reader = new Reader(latexTokens(latex));
  const found = reader.row();
  if (!reader.isAtEnd()) throw new Error(`left over after ${latex}`);
  return found;
}

/** Where a row ends: closing brace, `\right`, `\\`, `\end{…}`. */
function endsRow(token: LatexToken): boolean {
  if (token.kind === 'mark') return token.text === '}';
  if (token.kind === 'words') return token.command === 'end';
  return token.kind === 'command' && (token.name === 'right' || token.name === '\\');
}

class Reader {
  readonly #tokens: readonly LatexToken[];
  #at = 0;
  constructor(tokens: readonly LatexToken[]) {
    this.#tokens = tokens;
  }

  isAtEnd(): boolean {
    return this.#at >= this.#tokens.length;
  }

  row(): MathNode {
    const parts: MathNode[] = [];
    for (let token = this.#peek(); token && !endsRow(token); token = this.#peek()) {
      if (this.#skips('&')) continue;
      parts.push(...this.#scripted(this.#atom()));
    }
    return rowOf(parts);
  }

  #peek(): LatexToken | undefined {
    return this.#tokens[this.#at];
  }

  #next(): LatexToken {
    const token = this.#peek();
    if (!token) throw new Error('LaTeX ends too early');
    this.#at++;
    return token;
  }

  #skips(mark: string): boolean {
    const token = this.#peek();
    const isIt = token?.kind === 'mark' && token.text === mark;
    if (isIt) this.#at++;
    return isIt;
  }

  #skipsCommand(name: string): boolean {
    const token = this.#peek();
    const isIt = token?.kind === 'command' && token.name === name;
    if (isIt) this.#at++;
    return isIt;
  }

  /** One or more nodes; a script belongs to the last of them. */
  #atom(): readonly MathNode[] {
    const token = this.#next();
    switch (token.kind) {
      case 'letters':
        return DIFFERENTIAL.test(token.text)
          ? token.text.split('').map((text) => ({ kind: 'name', text }))
          : [{ kind: 'name', text: token.text }];
      case 'digits':
        return [{ kind: 'number', text: token.text }];
      case 'words':
        return [this.#wordy(token)];
      case 'command':
        return [this.#command(token.name)];
      case 'mark':
        if (token.text === '{') return [this.#closed()];
        if (token.text === '^' || token.text === '_') throw new Error(`${token.text} stands on nothing`);
        return [{ kind: 'sign', text: SIGNS[token.text] ?? token.text }];
    }
  }

  #scripted(nodes: readonly MathNode[]): readonly MathNode[] {
    const base = nodes.at(-1);
    const scripts: { sub?: MathNode; sup?: MathNode } = {};
    for (;;) {
      if (!scripts.sub && this.#skips('_')) scripts.sub = this.#argument();
      else if (!scripts.sup && this.#skips('^')) scripts.sup = this.#argument();
      else break;
    }
    if (!base || (!scripts.sub && !scripts.sup)) return nodes;
    return [...nodes.slice(0, -1), { kind: 'scripts', base, ...scripts }];
  }

  /** A group in braces or one single character, as TeX takes arguments. */
  #argument(): MathNode {
    const token = this.#peek();
    if (token?.kind === 'letters' && token.text.length > 1) throw new Error(`"${token.text}" needs braces`);
    return rowOf(this.#atom());
  }

  #closed(): MathNode {
    const inside = this.row();
    if (!this.#skips('}')) throw new Error('a brace is not closed');
    return inside;
  }

  #wordy({ command, words }: Extract<LatexToken, { kind: 'words' }>): MathNode {
    if (command === 'text') return { kind: 'words', text: words };
    if (command === 'operatorname') return { kind: 'name', text: words };
    if (command !== 'begin' || words !== 'aligned') throw new Error(`unknown: \\${command}{${words}}`);
    const lines = [this.row()];
    while (this.#skipsCommand('\\')) lines.push(this.row());
    this.#next();
    return { kind: 'lines', lines };
  }

  #command(name: string): MathNode {
    const text = LETTERS[name] ?? (FUNCTIONS.includes(name) ? name : undefined);
    if (text !== undefined) return { kind: 'name', text };
    const sign = SIGNS[name];
    if (sign !== undefined) return { kind: 'sign', text: sign };
    const em = SPACES_em[name];
    if (em !== undefined) return { kind: 'space', em };
    switch (name) {
      case 'frac':
      case 'tfrac':
        return { kind: 'fraction', over: this.#argument(), under: this.#argument() };
      case 'sqrt':
        return { kind: 'root', under: this.#argument() };
      case 'bar':
        return { kind: 'bar', over: this.#argument() };
      case 'left':
        return this.#brackets();
      default:
        throw new Error(`unknown: \\${name}`);
    }
  }

  #brackets(): MathNode {
    const open = this.#bracket();
    const inside = this.row();
    if (!this.#skipsCommand('right')) throw new Error('\\left without \\right');
    return { kind: 'brackets', open, close: this.#bracket(), inside };
  }

  #bracket(): string {
    const token = this.#next();
    if (token.kind !== 'mark') throw new Error('\\left and \\right take one bracket');
    return token.text;
  }
}

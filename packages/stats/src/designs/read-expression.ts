import { StatsError } from '#elementary';

/** A formula as a tree. */
export type Expression =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'call'; readonly function: FunctionName; readonly argument: Expression }
  | {
      readonly kind: 'sum' | 'difference' | 'product' | 'quotient' | 'power';
      readonly left: Expression;
      readonly right: Expression;
    };

export type FunctionName = (typeof FUNCTIONS)[number];

const FUNCTIONS = ['exp', 'ln', 'log', 'log10', 'sqrt', 'sin', 'cos', 'arctan'] as const;
const TOKEN = /\s*(?:(\d+\.?\d*(?:[eE][-+]?\d+)?|\.\d+(?:[eE][-+]?\d+)?)|([A-Za-z][A-Za-z0-9]*)|(\*\*|[-+*/^()[\]]))/y;
/** Two levels per bracket: 50 brackets inside one another. */
const DEEPEST = 100;

/**
 * Reads a formula such as `b1*(1-exp(-b2*x))`: numbers, names, + - * / ^ (or **), round or square brackets, the functions
 * exp, ln, log (natural), log10, sqrt, sin, cos, arctan, and pi. Nothing else is understood, nothing is executed.
 *
 * @param text - the formula, at most 2000 characters and 50 brackets inside one another
 * @returns the formula as a tree
 * @throws StatsError "not-readable" (position: character, from 0, where it stops making sense)
 * @source usual precedence: powers bind tightest and from the right, -x^2 is -(x^2)
 */
export function readExpression(text: string): Expression {
  const tokens = tokensOf(text);
  const reader = new Reader(tokens, text.length);
  return reader.whole();
}

interface Token {
  readonly text: string;
  readonly kind: 'number' | 'name' | 'sign';
  readonly position: number;
}

function tokensOf(text: string): Token[] {
  if (text.length > 2000) throw new StatsError('not-readable', { position: 2000 });
  const tokens: Token[] = [];
  const pattern = new RegExp(TOKEN);
  const end = text.trimEnd().length;
  while (pattern.lastIndex < end) {
    const position = pattern.lastIndex;
    const found = pattern.exec(text);
    if (!found) throw new StatsError('not-readable', { position });
    const [, number, name, sign = ''] = found;
    if (number !== undefined) tokens.push({ text: number, kind: 'number', position });
    else if (name !== undefined) tokens.push({ text: name, kind: 'name', position });
    else tokens.push({ text: sign === '**' ? '^' : sign, kind: 'sign', position });
  }
  return tokens;
}

class Reader {
  readonly #tokens: readonly Token[];
  readonly #end: number;
  #place = 0;
  #depth = 0;

  constructor(tokens: readonly Token[], end: number) {
    this.#tokens = tokens;
    this.#end = end;
  }

  whole(): Expression {
    const expression = this.#sum();
    if (this.#place < this.#tokens.length) this.#stop();
    return expression;
  }

  #stop(): never {
    throw new StatsError('not-readable', { position: this.#tokens[this.#place]?.position ?? this.#end });
  }

  /** Takes the next token when it is one of these signs. */
  #taken(...signs: string[]): string | undefined {
    const token = this.#tokens[this.#place];
    if (token?.kind !== 'sign' || !signs.includes(token.text)) return undefined;
    this.#place++;
    return token.text;
  }

  #sum(): Expression {
    if (++this.#depth > DEEPEST) this.#stop();
    let left = this.#product();
    for (let sign = this.#taken('+', '-'); sign !== undefined; sign = this.#taken('+', '-'))
      left = { kind: sign === '+' ? 'sum' : 'difference', left, right: this.#product() };
    this.#depth--;
    return left;
  }

  #product(): Expression {
    let left = this.#signed();
    for (let sign = this.#taken('*', '/'); sign !== undefined; sign = this.#taken('*', '/'))
      left = { kind: sign === '*' ? 'product' : 'quotient', left, right: this.#signed() };
    return left;
  }

  #signed(): Expression {
    if (++this.#depth > DEEPEST) this.#stop();
    const sign = this.#taken('-', '+');
    const read =
      sign === '-'
        ? ({ kind: 'difference', left: { kind: 'number', value: 0 }, right: this.#signed() } as const)
        : sign === '+'
          ? this.#signed()
          : this.#power();
    this.#depth--;
    return read;
  }

  #power(): Expression {
    const left = this.#single();
    return this.#taken('^') === undefined ? left : { kind: 'power', left, right: this.#signed() };
  }

  #single(): Expression {
    const token = this.#tokens[this.#place];
    if (this.#taken('(', '[') !== undefined) return this.#closed(token?.text === '(' ? ')' : ']');
    if (token === undefined || token.kind === 'sign') return this.#stop();
    this.#place++;
    if (token.kind === 'number') return { kind: 'number', value: Number(token.text) };
    const known = FUNCTIONS.find((name) => name === token.text);
    if (known === undefined)
      return token.text === 'pi' ? { kind: 'number', value: Math.PI } : { kind: 'name', name: token.text };
    const bracket = this.#taken('(', '[');
    if (bracket === undefined) return this.#stop();
    return { kind: 'call', function: known, argument: this.#closed(bracket === '(' ? ')' : ']') };
  }

  #closed(bracket: string): Expression {
    const inner = this.#sum();
    if (this.#taken(bracket) === undefined) this.#stop();
    return inner;
  }
}

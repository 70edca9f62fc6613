import type { NumberReference } from '../../../numbers/index.ts';

/** A number in a sentence, and how it opens. */
interface SaidNumber {
  readonly text: string;
  readonly number: NumberReference;
}

/** A sentence in pieces; its numbers open. */
export type Said = readonly (string | SaidNumber)[];

const MARK = '\u0000';

/**
 * A sentence of the words with numbers in it that open.
 *
 * @param write - writes the sentence around texts by name
 * @param of - the texts by the same names; with a reference it opens
 * @returns the sentence in pieces
 */
export function said<Name extends string>(
  write: (texts: Readonly<Record<Name, string>>) => string,
  of: Readonly<Record<Name, string | readonly [text: string, number: NumberReference | undefined]>>,
): Said {
  const names = Object.keys(of) as Name[];
  const marks = Object.fromEntries(names.map((name) => [name, `${MARK}${name}${MARK}`])) as Record<Name, string>;
  return write(marks)
    .split(MARK)
    .flatMap((piece, i): Said => {
      if (i % 2 === 0) return piece === '' ? [] : [piece];
      const value = of[piece as Name];
      if (typeof value === 'string') return [value];
      const [text, number] = value;
      return [number ? { text, number } : text];
    });
}

import { Fragment, type ReactNode } from 'react';
import type { NumberKey } from './number-reference.ts';
import { PageNumber } from './page-number.tsx';

const MARK = '\u0000';

/**
 * A sentence of the words with numbers in it that open.
 *
 * @param write - writes the sentence around texts by name
 * @param numbers - by the same names: what is shown, and what it opens; without a key it is plain text
 * @returns the sentence as pieces
 */
export function numbersInSentence<Name extends string>(
  write: (texts: Readonly<Record<Name, string>>) => string,
  numbers: Readonly<Record<Name, { readonly text: string; readonly number: NumberKey | undefined }>>,
): ReactNode {
  const names = Object.keys(numbers) as Name[];
  const marks = Object.fromEntries(names.map((name) => [name, `${MARK}${name}${MARK}`])) as Record<Name, string>;
  return write(marks)
    .split(MARK)
    .map((piece, i) => {
      if (i % 2 === 0) return <Fragment key={i}>{piece}</Fragment>;
      const { text, number } = numbers[piece as Name];
      if (number === undefined) return <Fragment key={i}>{text}</Fragment>;
      return (
        <PageNumber key={i} number={number}>
          {text}
        </PageNumber>
      );
    });
}

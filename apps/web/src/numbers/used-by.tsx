import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import type { NumberKey, NumberReference, NumberReferences } from './number-reference.ts';
import { openedNumber } from './opened-number.ts';
import { useLink } from './use-link.ts';

interface UsedByProps {
  readonly of: NumberKey | undefined;
  readonly references: NumberReferences;
}

/** The other numbers of the page that are made from this one. */
export function UsedBy({ of, references }: UsedByProps): ReactNode {
  const open = useLink();
  if (of === undefined) return null;
  const users = Object.values(references).flatMap((reference) =>
    reference?.key !== undefined && uses(reference, of) ? [{ ...reference, key: reference.key }] : [],
  );
  if (users.length === 0) return <p className="quiet">{OPEN_NUMBER_WORDS.usedByNothing}</p>;
  return (
    <>
      <p>{OPEN_NUMBER_WORDS.usedBy}</p>
      <ul className="open-number-users">
        {users.map((reference) => (
          <li key={reference.key}>
            <button
              type="button"
              className="number"
              onClick={() => {
                open(reference.key);
              }}
            >
              {openedNumber(reference).text} {reference.title}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

function uses({ from = [], origins = {} }: NumberReference, key: NumberKey): boolean {
  return from.includes(key) || Object.values(origins).some(({ number }) => number === key);
}

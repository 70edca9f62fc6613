import type { ReactNode } from 'react';
import { useNumberStop } from '../drawing/index.ts';
import type { NumberKey, NumberReference } from './number-reference.ts';
import { nameOf, useOpenNumber } from './open-number-context.ts';

interface PageNumberProps {
  /** By key it follows the levers; a reference says by itself how the catalogue computes it, on whatever page. */
  readonly number: NumberKey | NumberReference;
  /** Of a set-up of the ranking that is not the one drawn; of a number by key. */
  readonly rank?: number | undefined;
  readonly className?: string;
  /** Where the text alone does not say what it is. */
  readonly label?: string;
  readonly children: ReactNode;
}

/** A computed number of a page; it opens in place. */
export function PageNumber({ number, rank, className = '', label, children }: PageNumberProps): ReactNode {
  const { open } = useOpenNumber();
  const name = nameOf(number);
  const tabIndex = useNumberStop(name);
  return (
    <button
      type="button"
      className={`number ${className}`.trim()}
      aria-label={label}
      data-number={name}
      tabIndex={tabIndex}
      onClick={() => {
        open(rank === undefined || typeof number !== 'string' ? number : { key: number, rank });
      }}
    >
      {children}
    </button>
  );
}

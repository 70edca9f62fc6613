import type { ReactNode } from 'react';
import type { NumberKey } from './number-reference.ts';
import { useOpenNumber } from './open-number-context.ts';

interface PageNumberProps {
  readonly number: NumberKey;
  /** Of a set-up of the ranking that is not the one drawn. */
  readonly rank?: number | undefined;
  readonly className?: string;
  /** Where the text alone does not say what it is. */
  readonly label?: string;
  readonly children: ReactNode;
}

/** A computed number of the page under the drawing; it opens in place. */
export function PageNumber({ number, rank, className = '', label, children }: PageNumberProps): ReactNode {
  const { open } = useOpenNumber();
  return (
    <button
      type="button"
      className={`number ${className}`.trim()}
      aria-label={label}
      data-number={number}
      onClick={() => {
        open(rank === undefined ? number : { key: number, rank });
      }}
    >
      {children}
    </button>
  );
}

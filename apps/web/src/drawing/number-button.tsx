import { useContext, type ReactNode } from 'react';
import { useNumberStop } from './number-group.tsx';
import { OpeningContext, type NumberName } from './opening.ts';

interface NumberButtonProps {
  readonly number: NumberName;
  readonly className?: string;
  readonly children: ReactNode;
}

/** A computed number; it opens in place: equation, inputs, source, validity. On paper it is plain text. */
export function NumberButton({ number, className = '', children }: NumberButtonProps): ReactNode {
  const opening = useContext(OpeningContext);
  const tabIndex = useNumberStop(number);
  if (!opening) return <span className={className}>{children}</span>;
  return (
    <button
      type="button"
      className={`number ${className}`.trim()}
      data-number={number}
      tabIndex={tabIndex}
      onClick={() => {
        opening.open(number);
      }}
    >
      {children}
    </button>
  );
}

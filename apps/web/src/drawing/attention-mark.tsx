import type { ReactNode } from 'react';

/** The triangle of attention: the colour never stands alone. Words beside it say what it is. */
export function AttentionMark(): ReactNode {
  return (
    <svg className="attention-mark" width="14" height="13" viewBox="0 0 14 13" aria-hidden="true">
      <path d="M7 0l7 13H0z" />
    </svg>
  );
}

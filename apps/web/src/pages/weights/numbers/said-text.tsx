import { Fragment, type ReactNode } from 'react';
import { PageNumber } from '../../../numbers/index.ts';
import type { Said } from './said.ts';

/** A sentence whose numbers open in place. */
export function SaidText({ pieces }: { readonly pieces: Said }): ReactNode {
  return pieces.map((piece, i) =>
    typeof piece === 'string' ? (
      <Fragment key={i}>{piece}</Fragment>
    ) : (
      <PageNumber key={i} number={piece.number}>
        {piece.text}
      </PageNumber>
    ),
  );
}

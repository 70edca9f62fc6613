import { useState, type ReactNode } from 'react';
import { FILL_WORDS } from '@fillwright/words/en';
import { drawingOf, type DrawnSetUp } from '../../drawing/index.ts';

/** The drawing as a table, for those who do not see it. */
export function AsTable({ setUp }: { readonly setUp: DrawnSetUp }): ReactNode {
  const [isOpen, setOpen] = useState(false);
  const drawing = drawingOf(setUp.candidate.method);
  if (!drawing) return null;
  return (
    <details
      className="bench-table"
      onToggle={(event) => {
        setOpen(event.currentTarget.open);
      }}
    >
      <summary>{FILL_WORDS.asText}</summary>
      {isOpen ? <drawing.Table setUp={setUp} /> : null}
    </details>
  );
}

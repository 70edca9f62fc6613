import { memo, type ReactNode } from 'react';
import { FILL_WORDS } from '@fillwright/words/en';
import { SourceMark } from '../fields/index.ts';

/** What the marks of the drawing mean. */
export const Legend = memo(function Legend(): ReactNode {
  const { legend } = FILL_WORDS;
  return (
    <p className="drawing-legend quiet">
      {(['measured', 'calibrated', 'guess'] as const).map((kind) => (
        <span key={kind}>
          <SourceMark kind={kind} isBare /> <span aria-hidden="true">{legend[kind]}</span>
        </span>
      ))}
      <span>
        <span className="drawing-legend-range" aria-hidden="true" /> {legend.validated}
      </span>
    </p>
  );
});

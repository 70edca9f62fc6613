import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import type { FileFault } from '@fillwright/engine/catalogue';
import { documentFaultSentence, FILL_WORDS } from '@fillwright/words/en';
import { AttentionMark } from '../../drawing/index.ts';
import type { WorkbenchState } from '../../state/index.ts';
import { Rejections } from './rejections.tsx';

/** What is said where there is no drawing, or only an old one: no product, a brief with faults, nothing that fits, nothing computed. */
export function BenchNotice({
  state,
  hasDrawing,
}: {
  readonly state: WorkbenchState;
  readonly hasDrawing: boolean;
}): ReactNode {
  const { id, brief, isSearching, design, failure } = state;
  if (id === undefined)
    return (
      <Notice>
        {FILL_WORDS.empty} <Link to="/">{FILL_WORDS.toStart}</Link>
      </Notice>
    );
  if (failure !== undefined) return <Notice isAttention>{failure}</Notice>;
  if (brief.kind === 'faulty')
    return (
      <Notice isAttention>
        {FILL_WORDS.faulty(brief.faults.length)} {hasDrawing ? `${FILL_WORDS.faultyOld} ` : ''}
        <Link to="/products/$id/brief" params={{ id }}>
          {FILL_WORDS.toBrief}
        </Link>
        <Faults faults={brief.faults} />
      </Notice>
    );
  if (hasDrawing) return null;
  if (brief.kind === 'reading' || isSearching || !design) return <Notice>{FILL_WORDS.reading}</Notice>;
  return (
    <Notice isAttention>
      {FILL_WORDS.none}
      <Rejections rejections={design.rejections} isOpen />
      <Link to="/products/$id/brief" params={{ id }}>
        {FILL_WORDS.toBrief}
      </Link>
    </Notice>
  );
}

/** Every fault in words, so that nobody has to leave the bench to know what is missing. */
function Faults({ faults }: { readonly faults: readonly FileFault[] }): ReactNode {
  return (
    <ul className="bench-faults">
      {faults.map((fault, i) => (
        <li key={i}>
          {documentFaultSentence(fault)}{' '}
          {fault.line === undefined ? null : <span className="quiet">{FILL_WORDS.faultLine(fault.line)}</span>}
        </li>
      ))}
    </ul>
  );
}

function Notice(props: { readonly isAttention?: boolean; readonly children: ReactNode }): ReactNode {
  return (
    <div className="bench-notice" role="status">
      {props.isAttention ? <AttentionMark /> : null} {props.children}
    </div>
  );
}

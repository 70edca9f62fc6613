import type { FileFault } from '@fillwright/engine/catalogue';
import type { DocumentNotice } from '@fillwright/engine/design';
import { BRIEF_PAGE_WORDS, documentNoticeSentence } from '@fillwright/words/en';
import type { ReactElement } from 'react';
import { FieldFault } from '../../fields/index.ts';
import type { BriefState } from '../../state/index.ts';
import { faultText, nameOf } from './fault-text.ts';
import { pathOf } from './field-path.ts';
import { ofTheBrief } from './of-the-brief.ts';

interface FaultListProps {
  readonly brief: BriefState;
  /** Leads to where a fault stands. */
  readonly onGo: (fault: FileFault) => void;
}

/** Whether the brief is in order; else everything there is to correct, each leading to its place. */
export function FaultList({ brief, onGo }: FaultListProps): ReactElement {
  if (brief.kind === 'reading') return <p className="quiet">{BRIEF_PAGE_WORDS.reading}</p>;
  if (brief.kind === 'sound')
    return (
      <>
        <p>{BRIEF_PAGE_WORDS.inOrder}</p>
        {brief.notices.length > 0 && <Notices notices={brief.notices} />}
      </>
    );
  return (
    <>
      <h2 className="brief-aside-title">{BRIEF_PAGE_WORDS.correct(brief.faults.length)}</h2>
      <ul className="fault-list">
        {brief.faults.map((fault, index) => (
          <li key={`${fault.field}-${String(index)}`}>
            {ofTheBrief(fault) ? (
              <button
                type="button"
                className="fault-list-way"
                onClick={() => {
                  onGo(fault);
                }}
              >
                <FieldFault>{faultText(fault)}</FieldFault>
                {fault.line !== undefined && (
                  <span className="fault-list-line">{BRIEF_PAGE_WORDS.line(fault.line)}</span>
                )}
              </button>
            ) : (
              <FieldFault>
                {fault.file}
                {fault.line === undefined ? '' : `:${String(fault.line)}`}: {faultText(fault)}
              </FieldFault>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}

function Notices({ notices }: { notices: readonly DocumentNotice[] }): ReactElement {
  return (
    <>
      <h2 className="brief-aside-title">{BRIEF_PAGE_WORDS.notices}</h2>
      <ul className="fault-list">
        {notices.map((notice) => (
          <li key={notice.field}>
            <FieldFault>{documentNoticeSentence({ ...notice, field: nameOf(pathOf(notice.field)) })}</FieldFault>
          </li>
        ))}
      </ul>
    </>
  );
}

import { fileDocument } from '@fillwright/contract/documents';
import type { FileFault } from '@fillwright/engine/catalogue';
import type { DocumentNotice } from '@fillwright/engine/design';
import { BRIEF_PAGE_WORDS, documentFaultSentence, documentNoticeSentence, FILE_WORDS } from '@fillwright/words/en';
import { Link } from '@tanstack/react-router';
import type { ReactElement } from 'react';
import { FileButton, type AskedFile } from '../../briefs/index.ts';
import { FieldFault } from '../../fields/index.ts';
import type { BriefState, NamedFile } from '../../state/index.ts';
import { faultText, nameOf } from './fault-text.ts';
import { pathOf } from './field-path.ts';
import { ofTheBrief } from './of-the-brief.ts';
import './fault-list.css';

interface FaultListProps {
  readonly brief: BriefState;
  /** Leads to where a fault stands. */
  readonly onGo: (fault: FileFault) => void;
  /** Opens a file that the brief names. */
  readonly onAsked: (files: readonly File[], asked: AskedFile) => void;
}

/** Whether the brief is in order; else everything there is to correct, each leading to its place. */
export function FaultList({ brief, onGo, onAsked }: FaultListProps): ReactElement {
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
              <>
                <FaultWay fault={fault} text={faultText(fault)} onGo={onGo} />
                <MissingFile fault={fault} onAsked={onAsked} />
              </>
            ) : (
              <FaultOfFile fault={fault} files={brief.files} />
            )}
          </li>
        ))}
      </ul>
    </>
  );
}

interface WayProps {
  readonly fault: FileFault;
  readonly text: string;
  readonly onGo: (fault: FileFault) => void;
}

/** What is wrong, as a way to its place. */
export function FaultWay({ fault, text, onGo }: WayProps): ReactElement {
  return (
    <button
      type="button"
      className="fault-list-way"
      onClick={() => {
        onGo(fault);
      }}
    >
      <FieldFault>{text}</FieldFault>
      {fault.line !== undefined && <span className="fault-list-line">{BRIEF_PAGE_WORDS.line(fault.line)}</span>}
    </button>
  );
}

/** Asks for a file that the brief names and that is not here. */
function MissingFile({ fault, onAsked }: { fault: FileFault } & Pick<FaultListProps, 'onAsked'>): ReactElement | null {
  const file = fault.code === 'file' ? String(fault.value) : '';
  const document = fileDocument(file);
  if (!document) return null;
  return (
    <FileButton
      isSingle
      className="fault-list-open"
      onFiles={(files) => {
        onAsked(files, { document, file });
      }}
    >
      {FILE_WORDS.openThis(file)}
    </FileButton>
  );
}

function FaultOfFile({ fault, files }: { fault: FileFault; files: readonly NamedFile[] }): ReactElement {
  const kept = files.find(({ file, version }) => file === fault.file && version !== undefined);
  return (
    <>
      <FieldFault>
        {fault.file}
        {fault.line === undefined ? '' : `:${String(fault.line)}`}: {documentFaultSentence(fault)}
      </FieldFault>
      {kept && (
        <Link className="fault-list-line" to="/files/$kind/$id" params={{ kind: kept.kind, id: kept.id }}>
          {FILE_WORDS.see(fault.file)}
        </Link>
      )}
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

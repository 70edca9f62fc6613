import { documentSchemas } from '@fillwright/contract/schemas';
import { changedText } from '@fillwright/contract/files';
import type { FileFault } from '@fillwright/engine/catalogue';
import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import { useMemo, useState, type ReactElement } from 'react';
import { useWorkbench, workbench } from '../../state/index.ts';
import { briefDocument, type BriefDocument } from './brief-document.ts';
import './brief-page.css';
import { BriefToolbar } from './brief-toolbar.tsx';
import { FaultList } from './fault-list.tsx';
import { focusField } from './focus-field.ts';
import { FormContext, type BriefForm } from './form-context.ts';
import { BriefFormView } from './form/brief-form-view.tsx';
import { HistoryView } from './history-view.tsx';
import { ofTheBrief } from './of-the-brief.ts';
import { reachableChange } from './reachable-change.ts';
import { limitsAt } from './schema-limits.ts';
import { TabList, type Tab } from './tab-list.tsx';
import { TextView } from './text-view.tsx';
import { useDropFile } from '../../briefs/index.ts';
import { useOpenBrief } from './use-open-brief.ts';
import { useUndoKeys } from './use-undo-keys.ts';

const SCHEMA = documentSchemas()['brief.schema.json'];
const NO_FAULTS: readonly FileFault[] = [];

/** The brief as a form and as a text, with its history. */
export function BriefPage(): ReactElement {
  const [tab, setTab] = useState<Tab>('form');
  const [line, setLine] = useState<{ line: number }>();
  const text = useWorkbench((state) => state.text);
  const brief = useWorkbench((state) => state.brief);
  const save = useWorkbench((state) => state.save);
  const id = useWorkbench((state) => state.id) ?? '';
  const open = useOpenBrief();
  const { isOver, ...drop } = useDropFile(open.file);
  useUndoKeys();
  const shown = useMemo(() => briefDocument(text), [text]);
  const faults = useMemo(() => (brief.kind === 'faulty' ? brief.faults.filter(ofTheBrief) : NO_FAULTS), [brief]);
  const go = (fault: FileFault): void => {
    if (tab === 'form' && focusField(fault.field)) return;
    setTab('text');
    setLine({ line: fault.line ?? 1 });
  };
  const version = save.kind === 'conflict' ? save.current.version : save.version;
  return (
    <div className="brief-page" data-over={isOver ? '' : undefined} {...drop}>
      <BriefToolbar id={id} text={text} save={save} open={open}>
        <TabList tab={tab} onTab={setTab} />
      </BriefToolbar>
      {open.said !== undefined && <p className="brief-said">{open.said}</p>}
      {isOver && <p className="brief-said">{BRIEF_PAGE_WORDS.dropHere}</p>}
      <div className="brief-columns" data-tab={tab}>
        {tab !== 'history' && (
          <aside className="brief-aside" aria-label={BRIEF_PAGE_WORDS.state}>
            {tab === 'form' && <SectionIndex />}
            <FaultList brief={brief} onGo={go} />
          </aside>
        )}
        <div className="brief-panel" role="tabpanel" id="brief-panel" aria-labelledby={`brief-tab-${tab}`}>
          {tab === 'form' && (
            <FormPanel
              shown={shown}
              faults={faults}
              onText={() => {
                setTab('text');
              }}
            />
          )}
          {tab === 'text' && <TextView text={text} faults={faults} goTo={line} />}
          {tab === 'history' && <HistoryView id={id} version={version} text={text} />}
        </div>
      </div>
    </div>
  );
}

/** The sections of the form, as its numbered headings. */
function SectionIndex(): ReactElement {
  return (
    <nav aria-label={BRIEF_PAGE_WORDS.index}>
      <ol className="brief-index">
        {Object.entries(BRIEF_PAGE_WORDS.sections).map(([id, title], index) => (
          <li key={id}>
            {index + 1} <a href={`#${id}`}>{title}</a>
          </li>
        ))}
      </ol>
    </nav>
  );
}

interface FormPanelProps {
  readonly shown: BriefDocument;
  readonly faults: readonly FileFault[];
  readonly onText: () => void;
}

function FormPanel({ shown, faults, onText }: FormPanelProps): ReactElement {
  const form = useMemo<BriefForm>(
    () => ({ document: shown, faults, limitsAt: (path) => limitsAt(SCHEMA, path), change: changeBrief(shown) }),
    [shown, faults],
  );
  if (!shown.isOpen)
    return (
      <div className="brief-closed">
        <p>{BRIEF_PAGE_WORDS.unreadable}</p>
        <button type="button" onClick={onText}>
          {BRIEF_PAGE_WORDS.toText}
        </button>
      </div>
    );
  return (
    <FormContext value={form}>
      <BriefFormView />
    </FormContext>
  );
}

/** Changes make one step as a text: at once, so that what is typed while the page is closed is kept too. */
function changeBrief({ value }: BriefDocument): BriefForm['change'] {
  return (...changes) => {
    const text = changes.reduce((now, [path, to]) => {
      const found = reachableChange(value, path, to);
      return changedText(now, found.path, found.value);
    }, workbench.state().text);
    workbench.setText(text);
  };
}

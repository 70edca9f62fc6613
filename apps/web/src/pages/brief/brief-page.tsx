import { documentSchemas } from '@fillwright/contract/schemas';
import { changedText } from '@fillwright/contract/files';
import type { FileFault } from '@fillwright/engine/catalogue';
import { BRIEF_PAGE_WORDS, FILE_WORDS } from '@fillwright/words/en';
import { useMemo, useState, type ReactElement, type ReactNode } from 'react';
import { useWorkbench, workbench, type BriefState, type NamedFile } from '../../state/index.ts';
import { briefDocument, type BriefDocument } from './brief-document.ts';
import { ArithmeticView } from './arithmetic-view.tsx';
import './brief-page.css';
import { BriefToolbar } from './brief-toolbar.tsx';
import { FaultList } from './fault-list.tsx';
import { focusField } from './focus-field.ts';
import { FormContext, type BriefForm } from './form-context.ts';
import { BriefFormView } from './form/brief-form-view.tsx';
import { HistoryView } from './history-view.tsx';
import { NamedFiles } from './named-files.tsx';
import { ofTheBrief } from './of-the-brief.ts';
import { reachableChange } from './reachable-change.ts';
import { limitsAt } from './schema-limits.ts';
import { TabList } from './tab-list.tsx';
import { TextView } from './text-view.tsx';
import { FileNotes, useDropFiles } from '../../briefs/index.ts';
import { useOpenBrief } from './use-open-brief.ts';
import { useUndoKeys } from './use-undo-keys.ts';

const SCHEMA = documentSchemas()['brief.schema.json'];
const TABS = ['form', 'text', 'history'] as const;
const NO_FAULTS: readonly FileFault[] = [];

/** The brief as a form and as a text, with its history. */
export function BriefPage(): ReactElement {
  const [tab, setTab] = useState<(typeof TABS)[number]>('form');
  const [line, setLine] = useState<{ line: number }>();
  const text = useWorkbench((state) => state.text);
  const brief = useWorkbench((state) => state.brief);
  const save = useWorkbench((state) => state.save);
  const id = useWorkbench((state) => state.id) ?? '';
  const open = useOpenBrief();
  const { isOver, ...drop } = useDropFiles(open.files);
  useUndoKeys();
  const shown = useMemo(() => briefDocument(text), [text]);
  const faults = useMemo(() => (brief.kind === 'faulty' ? brief.faults.filter(ofTheBrief) : NO_FAULTS), [brief]);
  const go = (fault: FileFault): void => {
    if (tab === 'form' && focusField(fault.field)) return;
    setTab('text');
    setLine({ line: fault.line ?? 1 });
  };
  const form = useMemo<BriefForm>(
    () => ({ document: shown, faults, limitsAt: (path) => limitsAt(SCHEMA, path), change: changeBrief(shown) }),
    [shown, faults],
  );
  const version = save.kind === 'conflict' ? save.current.version : save.version;
  return (
    <div className="brief-page" data-over={isOver ? '' : undefined} {...drop}>
      <BriefToolbar id={id} text={text} save={save} open={open} files={filesOf(brief)}>
        <TabList tabs={TABS} tab={tab} onTab={setTab} label={BRIEF_PAGE_WORDS.tabsLabel} />
      </BriefToolbar>
      <FileNotes notes={open.notes} className="brief-said" />
      {isOver && <p className="brief-said">{FILE_WORDS.dropHere}</p>}
      <FormContext value={form}>
        <div className="brief-columns" data-tab={tab}>
          {tab !== 'history' && (
            <Aside isOpen={shown.isOpen}>
              <FaultList brief={brief} onGo={go} onAsked={open.asked} />
              {tab === 'form' && <SectionIndex />}
              <NamedFiles files={filesOf(brief)} />
            </Aside>
          )}
          <div className="brief-panel" role="tabpanel" id="brief-panel" aria-labelledby={`brief-tab-${tab}`}>
            {tab === 'form' && (
              <FormPanel
                isOpen={shown.isOpen}
                onText={() => {
                  setTab('text');
                }}
              />
            )}
            {tab === 'text' && (
              <TextView text={text} faults={faults} goTo={line} words={BRIEF_PAGE_WORDS} onText={workbench.setText} />
            )}
            {tab === 'history' && (
              <HistoryView document={{ kind: 'brief', id }} version={version} text={text} onTake={workbench.setText} />
            )}
          </div>
        </div>
      </FormContext>
    </div>
  );
}

function filesOf(brief: BriefState): readonly NamedFile[] {
  return brief.kind === 'reading' ? [] : brief.files;
}

/** In sight while the form is worked on: what it adds up to, what is to correct, where everything stands. */
function Aside({ isOpen, children }: { readonly isOpen: boolean; readonly children: ReactNode }): ReactElement {
  return (
    <aside className="brief-aside" aria-label={BRIEF_PAGE_WORDS.state}>
      {isOpen && <ArithmeticView />}
      <div className="brief-state">{children}</div>
    </aside>
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

function FormPanel({ isOpen, onText }: { readonly isOpen: boolean; readonly onText: () => void }): ReactElement {
  if (isOpen) return <BriefFormView />;
  return (
    <div className="brief-closed">
      <p>{BRIEF_PAGE_WORDS.unreadable}</p>
      <button type="button" onClick={onText}>
        {BRIEF_PAGE_WORDS.toText}
      </button>
    </div>
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

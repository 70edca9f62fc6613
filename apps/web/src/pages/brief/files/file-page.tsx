import type { FileDocument } from '@fillwright/contract/documents';
import type { FileFault } from '@fillwright/engine/catalogue';
import { BRIEF_PAGE_WORDS, documentFaultSentence, FILE_WORDS, SHELL_WORDS } from '@fillwright/words/en';
import { Link } from '@tanstack/react-router';
import { useEffect, useState, type ReactElement } from 'react';
import {
  ConflictPanel,
  download,
  FileButton,
  fileName,
  FileNotes,
  saveSentence,
  useDropFiles,
} from '../../../briefs/index.ts';
import type { SaveState } from '../../../state/index.ts';
import '../brief-page.css';
import { FaultWay } from '../fault-list.tsx';
import { HistoryView } from '../history-view.tsx';
import { TabList } from '../tab-list.tsx';
import { TextView } from '../text-view.tsx';
import { SaveVersion } from './save-version.tsx';
import { useFileDesk } from './use-file-desk.ts';
import { useFileFaults } from './use-file-faults.ts';
import { useReopen } from './use-reopen.ts';

const TABS = ['text', 'history'] as const;
const NO_FAULTS: readonly FileFault[] = [];
const USUAL: readonly SaveState['kind'][] = ['kept', 'pending', 'saving'];

/** A filler or a shell that is kept: its text, what is wrong with it, its history. */
export function FilePage({ document }: { document: FileDocument }): ReactElement {
  const { desk, state, problem, again } = useFileDesk(document);
  const { notes, reopen } = useReopen(document, { desk, again });
  const { isOver, ...drop } = useDropFiles(reopen);
  const file = fileName(document);
  useEffect(() => {
    globalThis.document.title = `${SHELL_WORDS.title}: ${file}`;
  }, [file]);
  return (
    <main id="page" className="brief-page file-page" data-over={isOver ? '' : undefined} {...drop}>
      <header className="file-head">
        <h1>{file}</h1>
        <p>
          {FILE_WORDS.about[document.kind]} {FILE_WORDS.usedBy(file)}
        </p>
        <Link to="/">{FILE_WORDS.toStart}</Link>
      </header>
      <FileNotes notes={notes} className="brief-said" />
      {problem !== undefined && <p className="attention">{problem}</p>}
      {state.kind === 'none' && (
        <p>
          {FILE_WORDS.none(file)}{' '}
          <FileButton isSingle onFiles={reopen}>
            {FILE_WORDS.openThis(file)}
          </FileButton>
        </p>
      )}
      {state.kind === 'there' && <OpenFile document={document} desk={desk} state={state} onFiles={reopen} />}
    </main>
  );
}

interface OpenFileProps extends Pick<ReturnType<typeof useFileDesk>, 'desk' | 'state'> {
  readonly document: FileDocument;
  readonly onFiles: (files: readonly File[]) => void;
}

function OpenFile({ document, desk, state, onFiles }: OpenFileProps): ReactElement {
  const [tab, setTab] = useState<(typeof TABS)[number]>('text');
  const [line, setLine] = useState<{ line: number }>();
  const { text, save, isKeptHere } = state;
  const faults = useFileFaults(document, text);
  const file = fileName(document);
  const version = save.kind === 'conflict' ? save.current.version : save.version;
  return (
    <>
      <div className="brief-toolbar no-print">
        <TabList tabs={TABS} tab={tab} onTab={setTab} label={FILE_WORDS.tabsLabel} />
        <p className={USUAL.includes(save.kind) ? 'brief-save quiet' : 'brief-save attention'}>
          {saveSentence(save, { thing: 'file', isKeptHere })}
        </p>
        <div className="brief-ways">
          <FileButton isSingle onFiles={onFiles}>
            {FILE_WORDS.openAgain}
          </FileButton>
          <button
            type="button"
            onClick={() => {
              download(file, text);
            }}
          >
            {BRIEF_PAGE_WORDS.saveFile}
          </button>
        </div>
      </div>
      {save.kind === 'conflict' && <ConflictPanel thing="file" save={save} onResolve={desk.resolve} />}
      <div className="brief-columns" data-tab={tab}>
        {tab === 'text' && (
          <aside className="brief-aside" aria-label={FILE_WORDS.state}>
            <FileFaults
              faults={faults}
              onGo={(fault) => {
                setLine({ line: fault.line ?? 1 });
              }}
            />
            {faults?.length === 0 && <SaveVersion save={desk.save} />}
          </aside>
        )}
        <div className="brief-panel" role="tabpanel" id="brief-panel" aria-labelledby={`brief-tab-${tab}`}>
          {tab === 'text' ? (
            <TextView text={text} faults={faults ?? NO_FAULTS} goTo={line} words={FILE_WORDS} onText={desk.setText} />
          ) : (
            <HistoryView document={document} version={version} text={text} onTake={desk.setText} />
          )}
        </div>
      </div>
    </>
  );
}

interface FileFaultsProps {
  readonly faults: readonly FileFault[] | undefined;
  readonly onGo: (fault: FileFault) => void;
}

function FileFaults({ faults, onGo }: FileFaultsProps): ReactElement {
  if (!faults) return <p className="quiet">{BRIEF_PAGE_WORDS.reading}</p>;
  if (faults.length === 0) return <p>{FILE_WORDS.inOrder}</p>;
  return (
    <>
      <h2 className="brief-aside-title">{BRIEF_PAGE_WORDS.correct(faults.length)}</h2>
      <ul className="fault-list">
        {faults.map((fault, index) => (
          <li key={`${fault.field}-${String(index)}`}>
            <FaultWay fault={fault} text={documentFaultSentence(fault)} onGo={onGo} />
          </li>
        ))}
      </ul>
    </>
  );
}

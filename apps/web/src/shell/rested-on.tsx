import { KEEPING_WORDS } from '@fillwright/words/en';
import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { useWorkbench, workbench } from '../state/index.ts';
import './keeping.css';
import { olderFiles } from './older-files.ts';

/** Says where the design rests on an older version of a filler or shell than the page computes with, and what to do. */
export function RestedOn(): ReactNode {
  const restedOn = useWorkbench((state) => state.restedOn);
  const brief = useWorkbench((state) => state.brief);
  const older = brief.kind === 'sound' ? olderFiles(restedOn, brief.files) : [];
  if (older.length === 0) return null;
  const words = KEEPING_WORDS.olderFile;
  return (
    <div className="keeping keeping-line no-print" role="status">
      {older.map((one) => (
        <p key={one.file}>
          <span className="attention">
            <span aria-hidden="true">▲</span> {words.is(one)}
          </span>{' '}
          {words.keep(one)}{' '}
          <Link to="/files/$kind/$id" params={{ kind: one.kind, id: one.id }}>
            {words.toFile(one.file)}
          </Link>
        </p>
      ))}
      <button type="button" onClick={workbench.takeNewerFiles}>
        {words.take}
      </button>
    </div>
  );
}

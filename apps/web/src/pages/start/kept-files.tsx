import { FILE_WORDS } from '@fillwright/words/en';
import { Link } from '@tanstack/react-router';
import type { ReactElement } from 'react';
import { fileName, timeText } from '../../briefs/index.ts';
import type { KeptHead } from './use-products.ts';

/** The fillers and shells that were opened here. */
export function KeptFiles({ files }: { files: readonly KeptHead[] }): ReactElement {
  return (
    <section className="kept-files" aria-labelledby="kept-files-title">
      <h2 id="kept-files-title">{FILE_WORDS.listTitle}</h2>
      <p className="quiet">{FILE_WORDS.listNote}</p>
      <ul>
        {files.map(({ kind, id, version, status, at, by }) => (
          <li key={`${kind}/${id}`}>
            <Link to="/files/$kind/$id" params={{ kind, id }}>
              {fileName({ kind, id })}
            </Link>{' '}
            <span className="quiet">{FILE_WORDS.keptAs({ kind, version, status, at: timeText(at), by })}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

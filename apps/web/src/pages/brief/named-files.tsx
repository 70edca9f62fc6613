import { FILE_WORDS } from '@fillwright/words/en';
import { Link } from '@tanstack/react-router';
import type { ReactElement } from 'react';
import type { NamedFile } from '../../state/index.ts';

/** The fillers and shells that the brief names, as they were read; a kept one leads to its page. */
export function NamedFiles({ files }: { files: readonly NamedFile[] }): ReactElement | null {
  if (files.length === 0) return null;
  return (
    <>
      <h2 className="brief-aside-title brief-aside-more">{FILE_WORDS.named}</h2>
      <ul className="brief-index">
        {files.map(({ kind, id, file, version }) => (
          <li key={file}>
            {version === undefined ? (
              FILE_WORDS.ofExamples(file)
            ) : (
              <Link to="/files/$kind/$id" params={{ kind, id }}>
                {FILE_WORDS.ofVersion(file, version)}
              </Link>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}

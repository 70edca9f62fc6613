import type { ReactNode } from 'react';
import type { Rejection } from '@fillwright/engine/design';
import { FILL_WORDS, findingSentence } from '@fillwright/words/en';
import { alikeRejections } from './alike-rejections.ts';

/** Why shells and parts are not among the candidates: on demand, or at once where nothing is left. */
export function Rejections({
  rejections,
  isOpen = false,
}: {
  readonly rejections: readonly Rejection[];
  readonly isOpen?: boolean;
}): ReactNode {
  if (rejections.length === 0) return null;
  return (
    <details className="rejections" open={isOpen}>
      <summary>{FILL_WORDS.whyNot}</summary>
      <ul>
        {alikeRejections(rejections).map(({ nearest, moreCount }) => (
          <li key={`${nearest.size} ${nearest.reason.code}`}>
            <b>{[FILL_WORDS.inSize(nearest.size), ...Object.values(nearest.parts ?? {})].join(', ')}:</b>{' '}
            {findingSentence(nearest.reason)} {moreCount > 0 ? <i>{FILL_WORDS.andMore(moreCount)}</i> : null}
          </li>
        ))}
      </ul>
    </details>
  );
}

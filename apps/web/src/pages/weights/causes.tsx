import type { Revolution } from '@fillwright/engine/weights';
import { WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { CauseGrid } from '../../charts/index.ts';
import { causeTiles } from './cause-tiles.ts';

const words = WEIGHTS_VERDICT_WORDS.revolution;

/** What each cause would leave, as tiny grids; where nothing is odd, that. */
export function Causes({ revolution }: { readonly revolution: Revolution }): ReactNode {
  const tiles = causeTiles(revolution);
  if (tiles.length === 0) return <p className="weights-causes">{words.nothingOdd}</p>;
  return (
    <section className="weights-causes">
      <h3>{words.causes}</h3>
      <ul>
        {tiles.map(({ key, name, why, isLikely, cells }) => (
          <li key={key} className={isLikely ? 'cause-fits' : undefined}>
            <CauseGrid cells={cells} isLikely={isLikely} />
            <strong>{name}</strong>
            <span className={isLikely ? undefined : 'quiet'}>{why}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

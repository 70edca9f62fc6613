import type { ReactNode } from 'react';
import './charts.css';

interface CauseGridProps {
  /** Change against no cause, group by column. */
  readonly cells: readonly (readonly { readonly isHit: boolean }[])[];
  readonly isLikely: boolean;
}

const CELL = 6;
const GAP = 1;

/** What a cause would leave, group by column: the words beside it say the same. */
export function CauseGrid({ cells, isLikely }: CauseGridProps): ReactNode {
  const [width, height] = [(cells[0]?.length ?? 0) * (CELL + GAP), cells.length * (CELL + GAP)];
  return (
    <svg
      className="cause-grid"
      viewBox={`-2 -2 ${width + 3} ${height + 3}`}
      width={width + 3}
      height={height + 3}
      aria-hidden="true"
    >
      {isLikely ? <rect className="cause-frame" x={-1.5} y={-1.5} width={width + 2} height={height + 2} /> : null}
      {cells.map((row, group) =>
        row.map(({ isHit }, column) => (
          <rect
            key={`${group} ${column}`}
            className={isHit ? (isLikely ? 'cause-hit cause-likely' : 'cause-hit') : 'cause-cell'}
            x={column * (CELL + GAP)}
            y={group * (CELL + GAP)}
            width={CELL}
            height={CELL}
          />
        )),
      )}
    </svg>
  );
}

import { useEffect, type ReactNode } from 'react';
import { nameOf, useOpenNumber } from './open-number-context.ts';
import { OpenNumberPanel, usePanelAhead } from './lazy-panel.tsx';
import './number-dock.css';

/**
 * Where an opened number stands on a page that has no place of its own for it: at the foot of the screen, over the page,
 * which goes on below it. Not printed.
 */
export function NumberDock(): ReactNode {
  const { current } = useOpenNumber();
  const name = current === undefined ? undefined : nameOf(current);
  usePanelAhead(true);
  useEffect(() => {
    // The page keeps room for the panel: the number that was opened is never under it.
    if (name !== undefined)
      document.querySelector(`[data-number="${CSS.escape(name)}"]`)?.scrollIntoView({ block: 'nearest' });
  }, [name]);
  if (current === undefined) return null;
  return (
    <aside className="number-dock no-print">
      <OpenNumberPanel />
    </aside>
  );
}

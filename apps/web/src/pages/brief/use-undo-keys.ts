import { useEffect } from 'react';
import { workbench } from '../../state/index.ts';

/**
 * Ctrl+Z, Ctrl+Shift+Z and Ctrl+Y (with the command key on some keyboards) undo and redo the product. Where text is
 * being typed that is not handed on yet, and in the text of the brief, they stay the browser's own undo of that text.
 */
export function useUndoKeys(): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      const way = wayOf(event);
      if (!way || (event.target instanceof Element && event.target.matches('textarea, [data-typing]'))) return;
      event.preventDefault();
      workbench[way]();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => {
      window.removeEventListener('keydown', onKeyDown);
    };
  }, []);
}

function wayOf(event: KeyboardEvent): 'undo' | 'redo' | undefined {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return undefined;
  const key = event.key.toLowerCase();
  if (key === 'z') return event.shiftKey ? 'redo' : 'undo';
  return key === 'y' && !event.shiftKey ? 'redo' : undefined;
}

import { useEffect } from 'react';
import type { SheetDesk } from './use-weights-sheet.ts';

/** Undo and redo of the sheet by their usual keys, wherever the focus is; while text is typed they are the browser's own. */
export function useUndoKeys({ undo, redo }: Pick<SheetDesk, 'undo' | 'redo'>): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      const key = event.key.toLowerCase();
      const isWay = (event.ctrlKey || event.metaKey) && !event.altKey && (key === 'z' || key === 'y');
      const isTyping = event.target instanceof Element && event.target.matches('textarea, [data-typing]');
      if (!isWay || isTyping) return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) redo?.();
      else undo?.();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => {
      window.removeEventListener('keydown', onKeyDown);
    };
  }, [undo, redo]);
}

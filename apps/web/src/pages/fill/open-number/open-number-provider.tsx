import { useCallback, useEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import type { Letter } from './number-reference.ts';
import { LettersContext, OpenNumberContext, type Opened, type OpenNumber } from './open-number-context.ts';

const keyOf = (what: Opened | undefined): string | undefined => (typeof what === 'string' ? what : what?.key);

/** Keeps which numbers were opened one out of the other, and where the focus goes back to. */
export function OpenNumberProvider({ children }: { readonly children: ReactNode }): ReactNode {
  const [stack, setStack] = useState<readonly Opened[]>([]);
  const [letters, setLetters] = useState<readonly Letter[]>([]);
  const opener = useRef<{ readonly element: Element | null; readonly key: string | undefined }>(undefined);
  const depth = stack.length;

  const open = useCallback((what: Opened) => {
    opener.current ??= { element: document.activeElement, key: keyOf(what) };
    setStack((before) => (before.at(-1) === what ? before : [...before, what]));
  }, []);
  const back = useCallback(() => {
    setStack((before) => before.slice(0, -1));
  }, []);
  const close = useCallback(() => {
    setStack([]);
  }, []);

  useEffect(() => {
    if (depth > 0) return onEscape(back);
    setLetters([]);
    if (opener.current) focusAgain(opener.current);
    opener.current = undefined;
    return undefined;
  }, [depth, back]);

  const current = stack.at(-1);
  const value = useMemo<OpenNumber>(
    () => ({ ...(current === undefined ? {} : { current }), depth, open, back, close, letters }),
    [current, depth, open, back, close, letters],
  );
  return (
    <LettersContext value={setLetters}>
      <OpenNumberContext value={value}>{children}</OpenNumberContext>
    </LettersContext>
  );
}

/** Esc goes one step back wherever the focus is, unless something else has used it. @returns how to stop */
function onEscape(back: () => void): () => void {
  const listen = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    event.preventDefault();
    back();
  };
  document.addEventListener('keydown', listen);
  return () => {
    document.removeEventListener('keydown', listen);
  };
}

/** The element may have been in the band that the panel replaced: then the same number in its new place. */
function focusAgain({ element, key }: { readonly element: Element | null; readonly key: string | undefined }): void {
  const again = element?.isConnected ? element : document.querySelector(`[data-number="${CSS.escape(key ?? '')}"]`);
  if (again instanceof HTMLElement || again instanceof SVGElement) again.focus();
}

import { useCallback, useEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import type { Letter } from './number-reference.ts';
import { LettersContext, nameOf, OpenNumberContext, type Opened, type OpenNumber } from './open-number-context.ts';

/** Keeps which numbers were opened one out of the other, and where the focus goes back to. */
export function OpenNumberProvider({ children }: { readonly children: ReactNode }): ReactNode {
  const [stack, setStack] = useState<readonly Opened[]>([]);
  const [letters, setLetters] = useState<readonly Letter[]>([]);
  const opener = useRef<Opener>(undefined);
  const depth = stack.length;

  const open = useCallback((what: Opened) => {
    opener.current ??= openerNow(nameOf(what));
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

/** What had the focus when the first number was opened, and which of the places that show this number it is. */
interface Opener {
  readonly element: Element | null;
  readonly key: string;
  readonly place: PlaceInList;
}

/** Counted from 0: no unit. */
type PlaceInList = number;

function openerNow(key: string): Opener {
  const element = document.activeElement;
  return { element, key, place: placesOf(key).findIndex((one) => one === element) };
}

function placesOf(key: string): readonly Element[] {
  return [...document.querySelectorAll(`[data-number="${CSS.escape(key)}"]`)];
}

/** The element may have been in the band that the panel replaced: then the same number in its new place. */
function focusAgain({ element, key, place }: Opener): void {
  const places = placesOf(key);
  const again = element?.isConnected ? element : (places[place] ?? places[0]);
  if (again instanceof HTMLElement || again instanceof SVGElement) again.focus();
}

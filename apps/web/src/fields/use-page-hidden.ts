import { useEffect, useRef } from 'react';

/** Calls back when the page is left, reloaded or closed, while what is typed can still be handed on. */
export function usePageHidden(handOn: () => void): void {
  const last = useRef(handOn);
  useEffect(() => {
    last.current = handOn;
  });
  useEffect(() => {
    const onHide = (): void => {
      last.current();
    };
    window.addEventListener('pagehide', onHide);
    return () => {
      window.removeEventListener('pagehide', onHide);
    };
  }, []);
}

import { lazy, Suspense, useEffect, type ReactNode } from 'react';

const load = async () => ({ default: (await import('./open-number-panel.tsx')).OpenNumberPanel });
const Panel = lazy(load);
const AFTER_ms = 1500;

/** The panel with the whole catalogue behind it, loaded apart from the page. */
export function OpenNumberPanel(): ReactNode {
  return (
    <Suspense fallback={null}>
      <Panel />
    </Suspense>
  );
}

/**
 * Fetches the panel when the page has come to rest, so that the first number opens at once.
 *
 * @param isStanding - whether the page has its numbers: before that nothing is fetched that could keep them waiting
 */
export function usePanelAhead(isStanding: boolean): void {
  useEffect(() => {
    if (!isStanding) return undefined;
    const timer = setTimeout(() => {
      // Without a connection nothing is lost: the panel is asked for again when a number is opened.
      load().catch(() => undefined);
    }, AFTER_ms);
    return () => {
      clearTimeout(timer);
    };
  }, [isStanding]);
}

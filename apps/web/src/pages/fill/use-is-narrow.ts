import { useSyncExternalStore } from 'react';

const NARROW = '(max-width: 600px)';

function subscribe(listener: () => void): () => void {
  const query = matchMedia(NARROW);
  query.addEventListener('change', listener);
  return () => {
    query.removeEventListener('change', listener);
  };
}

/** @returns whether the page is for reading only: a phone */
export function useIsNarrow(): boolean {
  return useSyncExternalStore(subscribe, () => matchMedia(NARROW).matches);
}

import { useSyncExternalStore } from 'react';

let query: MediaQueryList | undefined;

/** Asked in every frame of a moving lever: made once. */
function narrow(): MediaQueryList {
  return (query ??= matchMedia('(max-width: 600px)'));
}

function subscribe(listener: () => void): () => void {
  narrow().addEventListener('change', listener);
  return () => {
    narrow().removeEventListener('change', listener);
  };
}

/** @returns whether the page is for reading only: a phone */
export function useIsNarrow(): boolean {
  return useSyncExternalStore(subscribe, () => narrow().matches);
}

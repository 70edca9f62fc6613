import { useSyncExternalStore } from 'react';

interface Query {
  readonly subscribe: (listener: () => void) => () => void;
  readonly matches: () => boolean;
}

/** Asked in every frame of a moving lever: the list is made once. */
function query(media: string): Query {
  let made: MediaQueryList | undefined;
  const list = (): MediaQueryList => (made ??= matchMedia(media));
  return {
    subscribe: (listener) => {
      list().addEventListener('change', listener);
      return () => {
        list().removeEventListener('change', listener);
      };
    },
    matches: () => list().matches,
  };
}

const PHONE = query('(max-width: 600px)');
const UPRIGHT = query('(max-width: 900px)');

/** @returns whether the page is for reading only (a phone), and whether machine and capsule stand one above the other */
export function useIsNarrow(): { readonly isNarrow: boolean; readonly isUpright: boolean } {
  const isNarrow = useSyncExternalStore(PHONE.subscribe, PHONE.matches);
  const isUpright = useSyncExternalStore(UPRIGHT.subscribe, UPRIGHT.matches);
  return { isNarrow, isUpright };
}

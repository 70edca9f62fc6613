import { useEffect, useState } from 'react';
import { hasInterval, intervalOfNumber } from './interval-of-number.ts';
import type { NumberInterval } from './number-interval.ts';
import type { NumberKey } from './number-reference.ts';
import type { PageFacts } from './references/page-facts.ts';

/** A tenth of a second of work: it waits until the levers rest. */
const REST_ms = 200;

interface Found {
  readonly key: NumberKey;
  readonly facts: PageFacts;
  readonly interval: NumberInterval | undefined;
}

/**
 * Interval of the number that is open.
 *
 * @param key - the number; undefined for one without a key
 * @param facts - of the set-up
 * @returns the interval, while the levers move that of the set-up before; pending until it belongs to this one
 */
export function useNumberInterval(
  key: NumberKey | undefined,
  facts: PageFacts | undefined,
): { readonly interval: NumberInterval | undefined; readonly isPending: boolean } {
  const [found, setFound] = useState<Found>();
  useEffect(() => {
    if (!hasInterval(key) || !facts) return undefined;
    const timer = setTimeout(() => {
      setFound({ key, facts, interval: intervalOfNumber(key, facts) });
    }, REST_ms);
    return () => {
      clearTimeout(timer);
    };
  }, [key, facts]);
  const isMine = found?.key === key;
  return {
    interval: isMine ? found?.interval : undefined,
    isPending: hasInterval(key) && !(isMine && found?.facts === facts),
  };
}

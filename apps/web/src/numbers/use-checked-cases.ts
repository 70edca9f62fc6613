import type { CaseResult } from '@fillwright/engine/catalogue';
import { useEffect, useState } from 'react';
import { checkedCases } from './check-cases.ts';

/**
 * The check values of an entry, recomputed in this browser.
 *
 * @param entry - catalogue id
 * @returns the cases; undefined until they are there
 */
export function useCheckedCases(entry: string): readonly CaseResult[] | 'not-loaded' | undefined {
  const [found, setFound] = useState<{
    readonly entry: string;
    readonly cases: readonly CaseResult[] | 'not-loaded';
  }>();
  useEffect(() => {
    let isWanted = true;
    const take = (cases: readonly CaseResult[] | 'not-loaded'): void => {
      if (isWanted) setFound({ entry, cases });
    };
    checkedCases(entry).then(take, () => {
      take('not-loaded');
    });
    return () => {
      isWanted = false;
    };
  }, [entry]);
  return found?.entry === entry ? found.cases : undefined;
}

import type { NumberKey } from './number-reference.ts';
import { useOpenNumber } from './open-number-context.ts';

/** @returns opens another number of the set-up whose number stands open */
export function useLink(): (key: NumberKey) => void {
  const { current, open } = useOpenNumber();
  const rank = typeof current === 'object' && 'rank' in current ? current.rank : undefined;
  return (key) => {
    open(rank === undefined ? key : { key, rank });
  };
}

import { WEIGHTS_PAGE_WORDS, WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import type { NamedCapsule } from '@fillwright/engine/weights';
import { capsuleNumber } from '../numbers/capsule-number.ts';
import { said, type Said } from '../numbers/said.ts';
import type { Weighed } from '../numbers/weighed.ts';

const MOST_NAMED = 12;

/**
 * Who is outside, each with its net mass.
 *
 * @param weighed - masses and judgement
 * @param outside - the capsules
 * @returns one sentence; none where nobody is
 */
export function whoLines(weighed: Weighed, outside: readonly NamedCapsule[]): readonly Said[] {
  if (outside.length === 0) return [];
  const { outsideList, capsule, andMore } = WEIGHTS_VERDICT_WORDS;
  const named = outside.slice(0, MOST_NAMED).map(({ index, net_mg }, i): Said => {
    const net = [WEIGHTS_PAGE_WORDS.mg(net_mg), capsuleNumber(weighed, index)] as const;
    return [...(i === 0 ? [] : [', ']), ...said(capsule, { number: String(index + 1), net })];
  });
  const more = outside.length - named.length;
  const [before = '', after = ''] = outsideList('|').split('|');
  return [[before, ...named.flat(), ...(more > 0 ? [`, ${andMore(more)}`] : []), after]];
}

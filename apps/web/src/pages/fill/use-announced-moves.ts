import { useEffect, useRef } from 'react';
import type { Candidate } from '@fillwright/engine/design';
import { announce } from '../../shell/announcer.tsx';
import type { DrawnSetUp } from '../../drawing/index.ts';
import { moveSentence } from './move-sentence.ts';

/** Says once where a lever came to rest; while it moves nothing is said. */
export function useAnnouncedMoves(setUp: DrawnSetUp | undefined, isMoving: boolean): void {
  const said = useRef<Candidate>(undefined);
  const settled = isMoving ? undefined : setUp;
  useEffect(() => {
    if (!settled) return;
    const { candidate, place } = settled;
    const from = said.current;
    said.current = candidate;
    if (!from || from === candidate) return;
    const sheet = place.method.sheet(place.context, candidate.settings);
    const sentence = moveSentence({ from, to: candidate, sheet });
    if (sentence !== '') announce(sentence);
  }, [settled]);
}

import type { Candidate, CandidateDetails } from '@fillwright/engine/design';
import { useMemo } from 'react';
import { useWorkbench } from '../state/index.ts';
import type { NumberReferences } from './number-reference.ts';
import type { Opened } from './open-number-context.ts';
import { numberReferences } from './references/number-references.ts';
import { pageFacts, type PageFacts } from './references/page-facts.ts';

/** What the numbers of a set-up were made from. */
export interface NumberFacts {
  readonly facts: PageFacts | undefined;
  readonly references: NumberReferences;
  /** Place in the ranking of a set-up that is not the one drawn. */
  readonly rank: number | undefined;
}

/**
 * The numbers of the set-up that is drawn, or of the one in the ranking whose number was opened.
 *
 * @param current - what stands open
 * @returns facts and references; none of them while the brief cannot be read
 */
export function useNumberFacts(current: Opened | undefined): NumberFacts {
  const rank = typeof current === 'object' && 'rank' in current ? current.rank : undefined;
  const drawn = useWorkbench((state) => state.candidate);
  const details = useWorkbench((state) => state.details);
  const ranked = useWorkbench(({ design }) => design?.candidates.find((one) => one.rank === rank));
  const input = useWorkbench(({ brief }) => (brief.kind === 'sound' ? brief.input : undefined));
  const candidate: Candidate | undefined = rank === undefined ? drawn : ranked;
  const ofCandidate: CandidateDetails | undefined = rank === undefined ? details : ranked;
  const facts = useMemo(
    () => (candidate && input ? pageFacts(candidate, ofCandidate, input) : undefined),
    [candidate, ofCandidate, input],
  );
  const references = useMemo(
    () => (candidate && input ? numberReferences(candidate, ofCandidate, input) : {}),
    [candidate, ofCandidate, input],
  );
  return { facts, references, rank };
}

import { useState } from 'react';
import type { SearchInput } from '@fillwright/engine/design';
import type { BriefState } from '../../state/index.ts';

/** @returns the newest brief that was in order: while a fault is being typed the drawing stays what it was */
export function useLastInput(brief: BriefState): SearchInput | undefined {
  const [last, setLast] = useState<SearchInput>();
  if (brief.kind === 'sound' && brief.input !== last) setLast(brief.input);
  return brief.kind === 'sound' ? brief.input : last;
}

import { DomainError } from '@fillwright/engine/catalogue';
import {
  detailsOf,
  placesOf,
  search,
  candidateAt,
  type CandidateDetails,
  type SearchInput,
} from '@fillwright/engine/design';
import { targetFill } from '@fillwright/engine/brief';
import type { DesignAnswer, DesignCall } from './design-calls.ts';
import type { Choice } from './workbench-state.ts';

/** @returns the answer to a call, also when it cannot be computed */
export function designAnswer(call: DesignCall): DesignAnswer {
  try {
    if (call.kind === 'search') return { id: call.id, kind: 'search', design: search(call.input) };
    return { id: call.id, kind: 'details', details: details(call.input, call.choice) };
  } catch (error) {
    const { id } = call;
    if (error instanceof DomainError) return { id, kind: 'refused', code: error.code, facts: error.facts };
    return { id, kind: 'broken' };
  }
}

function details(input: SearchInput, choice: Choice): CandidateDetails {
  const place = placesOf(input).places.find(
    ({ record, method }) => record.size === choice.size && method.id === choice.method,
  );
  if (!place) throw new DomainError('no-geometry', { size: choice.size });
  const candidate = candidateAt(input, place, choice.settings);
  return detailsOf(input, place, { candidate, target: targetFill(input.brief.parts[0].target) });
}

import { placesOf, type Place, type SearchInput } from '@fillwright/engine/design';
import type { DrawnSetUp } from '../../drawing/index.ts';
import type { Workbench, WorkbenchState } from '../../state/index.ts';
import { candidateOfRank } from './candidate-rows.ts';

const PLACES = new WeakMap<SearchInput, readonly Place[]>();

/** Places of a brief, kept as long as the brief: a lever asks for them in every frame. */
function placesKept(input: SearchInput): readonly Place[] {
  const kept = PLACES.get(input) ?? placesOf(input).places;
  PLACES.set(input, kept);
  return kept;
}

/**
 * What the drawing shows of the workbench's state.
 *
 * @param input - the newest brief that was in order
 * @param state - of the workbench
 * @param act - what may be moved, and the rank of the candidate that is compared with
 * @returns the set-up; undefined while there is none, or its shell is no longer in the brief
 */
export function setUpOf(
  input: SearchInput | undefined,
  state: WorkbenchState,
  act: { readonly move: Workbench['move'] | undefined; readonly compared: number | undefined },
): DrawnSetUp | undefined {
  const { candidate, before, details, areDetailsPending, design } = state;
  if (!input || !candidate) return undefined;
  const place = placesKept(input).find(
    ({ record, method }) => record.size === candidate.size && method.id === candidate.method,
  );
  if (!place) return undefined;
  const compared = candidateOfRank(design, act.compared);
  const sameMethod = compared?.method === candidate.method ? compared : undefined;
  return {
    ...{ input, place, candidate, details, areDetailsPending },
    before: before ?? sameMethod,
    isMoving: before !== undefined,
    move: act.move,
  };
}

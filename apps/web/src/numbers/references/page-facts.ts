import { targetFill, type TargetFill } from '@fillwright/engine/brief';
import {
  placesOf,
  type Candidate,
  type CandidateDetails,
  type Place,
  type SearchInput,
} from '@fillwright/engine/design';
import { valuesAtMeans, type Parameter, type ParameterValues } from '@fillwright/engine/dosing';

/** Everything that the numbers of the bench were made from. */
export interface PageFacts {
  readonly candidate: Candidate;
  readonly details: CandidateDetails | undefined;
  readonly input: SearchInput;
  readonly place: Place;
  readonly target: TargetFill;
  readonly parameters: readonly Parameter[];
  /** The parameters at the means of their priors, as a prediction without further values takes them. */
  readonly values: ParameterValues;
}

/**
 * Looks up again what a candidate was computed from.
 *
 * @param candidate - the set-up on the page
 * @param details - of the same set-up; left out while they are computed
 * @param input - brief, filler and shells
 * @returns the facts; undefined when the brief no longer has the candidate's shell
 */
export function pageFacts(
  candidate: Candidate,
  details: CandidateDetails | undefined,
  input: SearchInput,
): PageFacts | undefined {
  const place = placesOf(input).places.find(
    ({ record, method }) => record.size === candidate.size && method.id === candidate.method,
  );
  if (!place) return undefined;
  const parameters = place.method.parameters(place.context, candidate.settings);
  const target = targetFill(input.brief.parts[0].target);
  return { candidate, details, input, place, target, parameters, values: valuesAtMeans(parameters) };
}

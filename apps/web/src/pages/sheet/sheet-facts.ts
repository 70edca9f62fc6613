import {
  placesOf,
  type Brief,
  type Candidate,
  type CandidateDetails,
  type Place,
  type SearchInput,
} from '@fillwright/engine/design';
import { targetFill, type TargetFill } from '@fillwright/engine/brief';
import type { Adjuster } from '@fillwright/engine/dosing';
import { plainNumber } from '@fillwright/words/numbers';

/** Everything that both pages print. */
export interface SheetFacts {
  readonly brief: Brief;
  readonly input: SearchInput;
  readonly place: Place;
  readonly candidate: Candidate;
  readonly details: CandidateDetails;
  readonly target: TargetFill;
  readonly adjusters: readonly Adjuster[];
}

/**
 * Looks up what the sheet is made of.
 *
 * @param input - brief, filler, shells
 * @param candidate - the set-up
 * @param details - of the same set-up
 * @returns the facts; undefined when the brief no longer has the shell
 */
export function sheetFacts(
  input: SearchInput,
  candidate: Candidate,
  details: CandidateDetails,
): SheetFacts | undefined {
  const place = placesOf(input).places.find(
    ({ record, method }) => record.size === candidate.size && method.id === candidate.method,
  );
  if (!place) return undefined;
  const { brief } = input;
  const adjusters = place.method.adjusters(place.context, candidate.settings);
  return { brief, input, place, candidate, details, target: targetFill(brief.parts[0].target), adjusters };
}

/** Capsules of the first weighing: a hundred, or the sample of the brief where that is larger. */
export function firstCount({ brief }: SheetFacts): number {
  return Math.max(100, brief.inProcess.sampleCount ?? 0);
}

/** @returns a number with fixed decimals and a true minus sign */
export const fixed = (value: number, decimals = 1): string => plainNumber(value, { decimals }).replace('-', '−');

/** @returns a number without needless zeros, at most two decimals */
export const short = (value: number): string =>
  plainNumber(Number(value.toFixed(2)), { upToSignificantDigits: 8 }).replace('-', '−');

/** @returns a change with its sign */
export const signed = (value: number, decimals = 1): string => (value > 0 ? '+' : '') + fixed(value, decimals);

/** Digits that a balance shows, and what a computed limit may be off by itself, mg. */
const SHOWN_mg = 0.1;
const ROUNDING_mg = 1e-6;

/**
 * A limit as it is printed: rounded inwards, so that what passes the printed limit passes the true one.
 *
 * @param limit_mg - the limit
 * @param end - low or high
 * @returns the text with one decimal
 */
export function limitText(limit_mg: number, end: 'low' | 'high'): string {
  const steps =
    end === 'low' ? Math.ceil((limit_mg - ROUNDING_mg) / SHOWN_mg) : Math.floor((limit_mg + ROUNDING_mg) / SHOWN_mg);
  return fixed(steps * SHOWN_mg);
}

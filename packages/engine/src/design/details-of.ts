import type { TargetFill } from '#brief';
import { gains, intervalOfMean, parameterDraws } from '#dosing';
import { betweenTimesOf } from './between-times.ts';
import type { Candidate, CandidateDetails } from './candidate.ts';
import { expectedWeights } from './expected-weights.ts';
import { limitCard } from './limit-card.ts';
import type { Place, SearchInput } from './place.ts';
import { routeOutlook } from './route-outlook.ts';
import { tareOf } from './tare.ts';

/**
 * Everything a person needs to decide on a candidate and to set the machine: interval, gains, outlook, sheet, card, first
 * weights. Dearer than `candidateAt`: a browser computes it in a worker.
 *
 * @param input - brief, filler and the seed of the draws
 * @param place - shell and way of dosing
 * @param at - the candidate at this place, and the target
 * @returns the details
 * @throws DomainError as the method's own evaluation
 * @source see the entries of the rooms
 * @validity before the first trial
 */
export function detailsOf(
  input: SearchInput,
  place: Place,
  at: { readonly candidate: Candidate; readonly target: TargetFill },
): CandidateDetails {
  const { brief, seed } = input;
  const { method, context, record, shellIndex } = place;
  const { candidate, target } = at;
  const { settings, prediction, afterSetUp: set } = candidate;
  const evaluate = method.evaluator(context, settings);
  const parameters = method.parameters(context, settings);
  const draws = parameterDraws(parameters, seed);
  const interval = intervalOfMean({ parameters, evaluate, draws });
  const gained = gains({ method, context, settings, draws, interval });
  const unit = { mean_pct: prediction.spread.unit_pct, sd_pct: prediction.spread.unsure_pct };
  const betweenTimes_pct = betweenTimesOf(brief).mean_pct;
  const { meanAction_pct } = brief.inProcess;
  const shell = brief.shells[shellIndex];
  const tare = shell ? tareOf(shell, record) : undefined;
  return {
    interval,
    gains: gained,
    outlook: routeOutlook({ brief, target, unit, setUp_pct: set.setUp_pct, betweenTimes_pct }),
    sheet: method.sheet(context, settings),
    ...(tare ? { card: limitCard({ target_mg: target.fill_mg, limits: brief.inProcess, tare }) } : {}),
    expected: expectedWeights({
      ...{ method, context, settings, prediction, interval, gains: gained },
      ...{ target_mg: target.fill_mg, meanAction_pct },
    }),
  };
}

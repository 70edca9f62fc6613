import { placesOf, type RankedCandidate, type SearchInput } from '#design';
import type { PossibleCause, StepOfPin, WeightsInput } from './weights-input.ts';

/** What is read of a set-up. */
type SetUp = Pick<RankedCandidate, 'expected' | 'size' | 'method' | 'settings' | 'prediction'>;

/**
 * What the set-up on the machine says about a column of weights: what to turn when the mean is off, and what each pin would
 * take away in its column if it did not go down.
 *
 * @param input - brief, filler and shells of the design
 * @param candidate - the set-up that is mounted
 * @returns corrections and causes for `weightsJudged`
 * @throws DomainError as the method's own prediction
 * @source prediction of the method with the pin at depth 0, against the prediction as set
 * @validity as the method; a pin stuck half-way takes less
 */
export function knownOfSetUp(input: SearchInput, candidate: SetUp): Pick<WeightsInput, 'corrections' | 'causes'> {
  const { under, over } = candidate.expected;
  const step = ({ adjuster, change_mg_per_step, step_mm }: StepOfPin): StepOfPin => ({
    ...{ adjuster, change_mg_per_step, step_mm },
  });
  return {
    corrections: { ...(under ? { under: step(under) } : {}), ...(over ? { over: step(over) } : {}) },
    causes: stuckPins(input, candidate),
  };
}

function stuckPins(input: SearchInput, { size, method: methodId, settings, prediction }: SetUp): PossibleCause[] {
  const place = placesOf(input).places.find(({ record, method }) => record.size === size && method.id === methodId);
  if (!place) return [];
  const { method, context } = place;
  return method.adjusters(context, settings).flatMap((adjuster): PossibleCause[] => {
    if (adjuster.kind !== 'setting' || adjuster.isIdle) return [];
    const values = { ...settings.values, [adjuster.key]: 0 };
    const { mass_mg } = method.predict(context, { ...settings, values });
    return [{ adjuster: adjuster.key, kind: 'column', change_mg: mass_mg - prediction.mass_mg }];
  });
}

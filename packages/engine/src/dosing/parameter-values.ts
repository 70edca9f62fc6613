import { standardUncertainty } from '#quantity';
import type { Parameter, ParameterValues } from './dosing.ts';

/** Mean of |z| of a standard normal, sqrt(2 / pi). */
const HALF_NORMAL_MEAN = Math.sqrt(2 / Math.PI);

/**
 * Value of a parameter z standard deviations from its mean (for a half-normal one: the scale times |z|).
 *
 * @param parameter - the parameter with its prior
 * @param z - standard normal coordinate
 * @returns value in the unit of the parameter's key, cut to its bounds
 * @throws DomainError "not-a-number" (a prior without a finite sd)
 * @source definition of the normal and half-normal distribution
 */
export function parameterValue(parameter: Parameter, z: StandardCoordinate): InUnitOfKey {
  return valueOfCoordinate(parameter)(z);
}

/**
 * The same, prepared for many coordinates of one parameter.
 *
 * @param parameter - the parameter with its prior
 * @returns value for a standard normal coordinate, see `parameterValue`
 * @throws DomainError "not-a-number" (a prior without a finite sd)
 * @source definition of the normal and half-normal distribution
 */
export function valueOfCoordinate(parameter: Parameter): (z: StandardCoordinate) => InUnitOfKey {
  const { prior, shape, lowest = -Infinity, highest = Infinity } = parameter;
  const { mean } = prior;
  const sd = standardUncertainty(prior);
  return (z) => Math.min(highest, Math.max(lowest, mean + sd * (shape === 'half-normal' ? Math.abs(z) : z)));
}

/**
 * All parameters at their prior means, with values given by the caller in their place.
 *
 * @param parameters - the parameters
 * @param given - values by key that replace the means
 * @returns values by key
 * @throws DomainError "not-a-number" (a prior without a finite sd)
 * @source none: bookkeeping
 */
export function valuesAtMeans(parameters: readonly Parameter[], given: ParameterValues = {}): ParameterValues {
  const means = parameters.map((parameter): [string, number] => [
    parameter.key,
    parameterValue(parameter, parameter.shape === 'half-normal' ? HALF_NORMAL_MEAN : 0),
  ]);
  return { ...Object.fromEntries(means), ...given };
}

/** A number of standard deviations: no unit. */
type StandardCoordinate = number;
/** A number in the unit of the key it belongs to. */
type InUnitOfKey = number;

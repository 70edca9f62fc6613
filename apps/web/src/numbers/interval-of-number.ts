import { intervalOfMean, parameterDraws, type Prediction } from '@fillwright/engine/dosing';
import { intervalOfGain } from './interval-of-gain.ts';
import type { NumberInterval } from './number-interval.ts';
import type { NumberKey } from './number-reference.ts';
import type { PageFacts } from './references/page-facts.ts';

/**
 * Interval of a number that the uncertain parameters move, by the same draws as that of the mean.
 *
 * @param key - the number
 * @param facts - candidate with its context
 * @returns central 90 % and shares; undefined for a number that does not come from the parameters
 */
export function intervalOfNumber(key: NumberKey, facts: PageFacts): NumberInterval | undefined {
  if (key.startsWith('gain:')) return intervalOfGain(Number(key.slice('gain:'.length)), facts);
  const read = readerOf(key);
  if (!read) return undefined;
  const { candidate, input, place, parameters } = facts;
  const { method, context } = place;
  const regimeOf = method.evaluator(context, candidate.settings);
  const interval = intervalOfMean({
    parameters,
    draws: parameterDraws(parameters, input.seed),
    evaluate: (values) => ({
      mass_mg: read(method.predict(context, candidate.settings, values)),
      regime: regimeOf(values).regime,
    }),
  });
  return { low90: interval.low90_mg, high90: interval.high90_mg, sd: interval.sd_mg, shares: interval.shares };
}

/** @returns whether the parameters move a number, so that it has an interval */
export function hasInterval(key: NumberKey | undefined): key is NumberKey {
  return key !== undefined && (key.startsWith('gain:') || readerOf(key) !== undefined);
}

/** Numbers of a prediction by key; what is measured or given does not move with the parameters. */
function readerOf(key: NumberKey): ((prediction: Prediction) => number) | undefined {
  const [name, number] = key.split(':');
  const at = ({ stations }: Prediction) => stations.find(({ station }) => station === Number(number));
  switch (name) {
    case 'mass':
      return number === undefined ? ({ mass_mg }) => mass_mg : (prediction) => at(prediction)?.mass_mg ?? NaN;
    case 'mean':
      return ({ mass_mg }) => mass_mg;
    case 'reached':
      return (prediction) => at(prediction)?.reached_mm ?? NaN;
    case 'force':
      return (prediction) => at(prediction)?.force_N ?? NaN;
    case 'pressure':
      return (prediction) => at(prediction)?.pressure_MPa ?? NaN;
    case 'density':
      return number === undefined
        ? ({ density_g_per_mL }) => density_g_per_mL
        : (prediction) => at(prediction)?.density_g_per_mL ?? NaN;
    default:
      return undefined;
  }
}

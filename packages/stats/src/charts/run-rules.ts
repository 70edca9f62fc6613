import { requireWithin, StatsError } from '#elementary';
import { CHART_RULES, type ChartRule } from './rule-sets.ts';

export interface RunRulesInput {
  /** One or more, in time order. */
  readonly values: readonly number[];
  readonly centre: number;
  /** Standard deviation of one plotted value. */
  readonly sigma: number;
  readonly rules: readonly ChartRule[];
}

/** A pattern that is complete at a point. */
export interface RuleSignal {
  readonly rule: ChartRule;
  /** Number of the point that completes the pattern, from 1. */
  readonly at: number;
  /** Numbers of the points that take part in it, rising; the last is `at`. */
  readonly points: readonly number[];
}

/** Distance from the centre and sign of the last step; what lies on a line within rounding is on it. */
interface Plotted {
  readonly values: readonly number[];
  /** Above 0: above the centre; a bound k is passed when |deviation| > k sigma + rounding. */
  readonly deviations: readonly number[];
  readonly sigma: number;
  readonly rounding: number;
}

/**
 * Finds every point at which a pattern is complete, with the points that take part.
 *
 * Inequalities are strict. The newest point itself takes part in "so many of so many". Both sides of the centre count
 * apart; a point on the centre line ends a run; a tie ends a trend or an alternation; six points in a trend are five
 * steps. Nothing starts anew after a signal.
 *
 * @param input - values, centre, sigma above 0, rules (none: no signals)
 * @returns signals, rule by rule in the order given, then by point
 * @throws StatsError "sample-size" (no value), "not-finite", "out-of-range"
 * @source patterns: see `RULE_SETS`; conventions: fixed by the check values, see SOURCES.md
 * @validity each further rule adds false alarms: see `rulesRunLength`
 */
export function runRules({ values, centre, sigma, rules }: RunRulesInput): readonly RuleSignal[] {
  requireWithin({ centre });
  requireWithin({ sigma }, { above: 0 });
  if (values.length === 0) throw new StatsError('sample-size', { valueCount: 0, min: 1 });
  for (const value of values) requireWithin({ value });
  const largest = values.reduce((most, value) => Math.max(most, Math.abs(value)), Math.abs(centre));
  const rounding = 8 * Number.EPSILON * largest;
  const plotted = { values, sigma, rounding, deviations: values.map((value) => value - centre) };
  return rules.flatMap((rule) => values.flatMap((_, i) => signalAt(rule, plotted, i)));
}

function signalAt(rule: ChartRule, plotted: Plotted, last: number): RuleSignal[] {
  const points = pointsOf(rule, plotted, last);
  return points.length === 0 ? [] : [{ rule, at: last + 1, points: points.map((i) => i + 1) }];
}

/** Indices that take part in the pattern that ends at `last`; empty when it is not complete. */
function pointsOf(rule: ChartRule, plotted: Plotted, last: number): number[] {
  const { deviations, sigma, rounding, values } = plotted;
  const definition = CHART_RULES[rule];
  const { needed } = definition;
  const newest = (count: number): number[] => Array.from({ length: count }, (_, i) => last - count + 1 + i);
  const allOf = (holds: (i: number) => boolean): number[] => {
    const points = newest(needed);
    return points[0]! >= 0 && points.every(holds) ? points : [];
  };
  const rise = (i: number): number => Math.sign(values[i]! - values[i - 1]!);
  const steps = (holds: (i: number) => boolean): number[] => allOf((i) => i === last - needed + 1 || holds(i));
  switch (definition.kind) {
    case 'window': {
      const bound = definition.distance === 0 ? 0 : definition.distance * sigma + rounding;
      const side = Math.sign(deviations[last]!);
      const points = newest(definition.of).filter((i) => i >= 0 && side * deviations[i]! > bound);
      return points.length >= needed && points.at(-1) === last ? points : [];
    }
    case 'trend':
      return steps((i) => rise(i) !== 0 && rise(i) === rise(last));
    case 'alternation':
      return steps((i) => rise(i) !== 0 && (i === last - needed + 2 || rise(i) === -rise(i - 1)));
    case 'within':
      return allOf((i) => Math.abs(deviations[i]!) < sigma - rounding);
    case 'beyond':
      return allOf((i) => Math.abs(deviations[i]!) > sigma + rounding);
  }
}

import { StatsError } from '#elementary';
import { CHART_RULES, type ChartRule } from './rule-sets.ts';

/** Edges between zones, in standard deviations from the centre. */
export const ZONE_EDGES = [-3, -2, -1, 0, 1, 2, 3] as const;
const ZONES = ZONE_EDGES.length + 1;

/** States are histories that no rule has stopped yet; state 0 is a fresh chart. */
export interface ZoneChain {
  readonly stateCount: number;
  /** Next state by state x 8 + zone; -1: a signal. */
  readonly next: Int32Array;
}

/** Memory of one rule on one side: how many states, and the next one, `radix` standing for a signal. */
interface Tracker {
  readonly radix: number;
  readonly step: (memory: number, isIn: boolean) => number;
  readonly isIn: (zone: number) => boolean;
}

/** Middle of each zone, enough to tell on which side of every line it lies. */
const MIDDLES = Array.from({ length: ZONES }, (_, i) => i - ZONES / 2 + 0.5);
const MOST_STATES = 200_000;

/**
 * The chain over zone histories that a set of rules makes.
 *
 * @param rules - rules that speak of zones only; at least one
 * @returns states and transitions
 * @throws StatsError "sample-size" (no rule), "out-of-range" (a trend or alternation, whose state is no zone; too many states)
 * @source C. W. Champ, W. H. Woodall, Technometrics 29 (1987) 393-399 (from memory)
 */
export function zoneChain(rules: readonly ChartRule[]): ZoneChain {
  if (rules.length === 0) throw new StatsError('sample-size', { ruleCount: 0, min: 1 });
  const trackers = [...new Set(rules)].flatMap(trackersOf);
  const index = new Map<number, number>([[0, 0]]);
  const codes = [0];
  const next: number[] = [];
  for (let state = 0; state < codes.length; state++) {
    for (let zone = 0; zone < ZONES; zone++) {
      const code = followed(trackers, { code: codes[state]!, zone });
      if (code >= 0 && !index.has(code)) {
        index.set(code, codes.length);
        codes.push(code);
      }
      next.push(code < 0 ? -1 : index.get(code)!);
    }
    if (codes.length > MOST_STATES)
      throw new StatsError('out-of-range', { stateCount: codes.length, max: MOST_STATES });
  }
  return { stateCount: codes.length, next: Int32Array.from(next) };
}

/** Memories of all trackers as the digits of one number; -1 when one of them signals. */
function followed(trackers: readonly Tracker[], { code, zone }: { code: number; zone: number }): number {
  let rest = code;
  let place = 1;
  let result = 0;
  for (const { radix, step, isIn } of trackers) {
    const memory = step(rest % radix, isIn(zone));
    if (memory === radix) return -1;
    result += place * memory;
    place *= radix;
    rest = Math.floor(rest / radix);
  }
  return result;
}

function trackersOf(rule: ChartRule): Tracker[] {
  const definition = CHART_RULES[rule];
  const middle = (zone: number): number => MIDDLES[zone]!;
  switch (definition.kind) {
    case 'window': {
      const { needed, of, distance } = definition;
      const memory = needed === of ? runOf(needed) : windowOf({ needed, of });
      return [1, -1].map((side) => ({ ...memory, isIn: (zone) => side * middle(zone) > distance }));
    }
    case 'within':
      return [{ ...runOf(definition.needed), isIn: (zone) => Math.abs(middle(zone)) < 1 }];
    case 'beyond':
      return [{ ...runOf(definition.needed), isIn: (zone) => Math.abs(middle(zone)) > 1 }];
    case 'trend':
    case 'alternation':
      throw new StatsError('out-of-range', { pointsOfTrendOrAlternation: definition.needed });
  }
}

/** So many in a row: the memory is their number. */
function runOf(needed: number): Omit<Tracker, 'isIn'> {
  return { radix: needed, step: (memory, isIn) => (isIn ? memory + 1 : 0) };
}

/** So many of the last so many, the newest among them: the memory is one bit per earlier point. */
function windowOf({ needed, of }: { needed: number; of: number }): Omit<Tracker, 'isIn'> {
  const radix = 1 << (of - 1);
  return {
    radix,
    step: (memory, isIn) => (isIn && bitsIn(memory) + 1 >= needed ? radix : ((memory << 1) | Number(isIn)) % radix),
  };
}

function bitsIn(word: number): number {
  let count = 0;
  for (let rest = word; rest > 0; rest >>= 1) count += rest & 1;
  return count;
}

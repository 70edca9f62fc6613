import { normalCdf } from '#distributions';
import { requireWithin } from '#elementary';
import type { ChartRule } from './rule-sets.ts';
import { ZONE_EDGES, zoneChain, type ZoneChain } from './zone-chain.ts';

export interface RulesChart {
  readonly rules: readonly ChartRule[];
  /** Shift of the mean in standard deviations of the plotted value. */
  readonly shift: number;
  /** A new chart, or one that has run in control for long without a signal; left out: fresh. */
  readonly start?: 'fresh' | 'steady';
}

export interface RulesRunLength {
  readonly mean: number;
  readonly sd: number;
  readonly stateCount: number;
}

const ZONES = ZONE_EDGES.length + 1;
/** Steps over which the ratio of survivals must stand still: longer than the longest memory, 15 points. */
const STILL = 40;
const MOST_STEPS = 100_000;
const chains = new Map<string, ZoneChain>();

/**
 * Run length of a chart of independent values with rules for runs, by a Markov chain over zone histories.
 *
 * The chance to be still without a signal is followed from point to point until it falls by a constant factor; the rest of
 * both sums is then a geometric series.
 *
 * @param input - rules: one or more that speak of zones (no trend, no alternation); shift -20 to 20; start
 * @returns mean and standard deviation of the number of points up to the signal, number of histories
 * @throws StatsError "sample-size" (no rule), "not-finite", "out-of-range" (also: a rule on trends or alternations)
 * @source C. W. Champ, W. H. Woodall, Technometrics 29 (1987) 393-399 (from memory)
 * @validity normal independent values, centre and sigma known; relative error below 1e-9
 */
export function rulesRunLength({ rules, shift, start = 'fresh' }: RulesChart): RulesRunLength {
  requireWithin({ shift }, { min: -20, max: 20 });
  const key = rules.join();
  const chain = chains.get(key) ?? zoneChain(rules);
  chains.set(key, chain);
  const first = new Float64Array(chain.stateCount);
  first[0] = 1;
  const from = start === 'fresh' ? first : followed({ chain, from: first, shift: 0 }).shape;
  const { mean, sd } = followed({ chain, from, shift });
  return { mean, sd, stateCount: chain.stateCount };
}

/** Sums of P(N > i) and of i P(N > i), and the law of the history of a chart still without a signal. */
function followed({ chain, from, shift }: { chain: ZoneChain; from: Float64Array; shift: number }): {
  mean: number;
  sd: number;
  shape: Float64Array;
} {
  const zones = zoneShares(shift);
  let shares = from;
  let [survival, ratio, still] = [1, 1, 0];
  let [total, moment] = [0, 0];
  let i = 0;
  for (; i < MOST_STEPS && still < STILL && survival > 1e-17; i++) {
    total += survival;
    moment += i * survival;
    shares = stepped(chain, { shares, zones });
    const now = shares.reduce((sum, share) => sum + share, 0);
    still = Math.abs(now - ratio) < 1e-14 ? still + 1 : 0;
    ratio = now;
    survival *= now;
    for (let state = 0; state < shares.length; state++) shares[state]! /= now;
  }
  const left = survival / (1 - ratio);
  const mean = total + left;
  const second = 2 * (moment + left * (i + ratio / (1 - ratio))) + mean;
  return { mean, sd: Math.sqrt(Math.max(0, second - mean * mean)), shape: shares };
}

function stepped(chain: ZoneChain, { shares, zones }: { shares: Float64Array; zones: Float64Array }): Float64Array {
  const next = new Float64Array(chain.stateCount);
  for (let state = 0; state < chain.stateCount; state++) {
    const share = shares[state]!;
    if (share === 0) continue;
    for (let zone = 0; zone < ZONES; zone++) {
      const to = chain.next[state * ZONES + zone]!;
      if (to >= 0) next[to]! += share * zones[zone]!;
    }
  }
  return next;
}

function zoneShares(shift: number): Float64Array {
  const below = [0, ...ZONE_EDGES.map((edge) => normalCdf(edge - shift)), 1];
  return Float64Array.from({ length: ZONES }, (_, i) => below[i + 1]! - below[i]!);
}

import { normalSurvival } from '@fillwright/stats/distributions';
import type { InProcessLimits } from './brief.ts';
import { weighedSpreads, type UncertainSpread } from './weighed-spreads.ts';

export interface AfterSetUpInput {
  readonly unit: UncertainSpread;
  /** Share of the unit variance that all bores of a stroke have in common. */
  readonly strokeShare_frac: number;
  readonly betweenTimes: UncertainSpread;
  readonly sampleCount: number;
  readonly boreCount: number;
  /** Samples that the set-up is judged on. */
  readonly setUpSampleCount: number;
  readonly limits: Pick<InProcessLimits, 'meanAction_pct' | 'individualAction_pct'>;
}

/** What to expect once the machine has been set, averaged over how unsure the spreads themselves are. */
export interface AfterSetUp {
  readonly capsulesOutside_frac: number;
  readonly sampleMeansOutside_frac: number;
  /** Standard deviation of the mean that the set-up leaves, % of the target, at the mean spreads. */
  readonly setUp_pct: number;
}

/**
 * Shares of capsules and of sample means outside the in-process limits, after set-up: mean = target + b.
 *
 * b ~ N(0, (t^2 + v_n)/k), v_n = phi u^2 / ceil(n / bores per carrier) + (1 - phi) u^2 / n; a capsule has u^2 + t^2 +
 * var b, a sample mean v_n + t^2 + var b. Both averaged over lognormal u and t.
 *
 * @param input - spread between capsules (u) and between times (t) with their own sd, share phi of u^2 common to a
 *   stroke, sample size n, bores per carrier, set-up samples k, limits in % of the target
 * @returns shares from 0 to 1, and the sd that the set-up leaves
 * @throws StatsError "not-positive" and others (a spread that is not a number above 0)
 * @source this project's model of set-up scatter; normal distribution, common practice
 * @validity no trend during the run; shell and balance are not in it (they belong to gross and net)
 */
export function afterSetUp(input: AfterSetUpInput): AfterSetUp {
  const { limits, setUpSampleCount } = input;
  const inSample_frac = shareInSampleMean_frac(input);
  const times = weighedSpreads(input.betweenTimes);
  const shares = { capsules: 0, means: 0 };
  for (const unit of weighedSpreads(input.unit)) {
    const unit_pct2 = unit.value_pct * unit.value_pct;
    const sample_pct2 = inSample_frac * unit_pct2;
    for (const time of times) {
      const weight = unit.weight * time.weight;
      const time_pct2 = time.value_pct * time.value_pct;
      const moved_pct2 = time_pct2 + (time_pct2 + sample_pct2) / setUpSampleCount;
      shares.capsules +=
        weight * outside({ limit_pct: limits.individualAction_pct, variance_pct2: unit_pct2 + moved_pct2 });
      shares.means += weight * outside({ limit_pct: limits.meanAction_pct, variance_pct2: sample_pct2 + moved_pct2 });
    }
  }
  const [unit_pct, time_pct] = [input.unit.mean_pct, input.betweenTimes.mean_pct];
  return {
    capsulesOutside_frac: shares.capsules,
    sampleMeansOutside_frac: shares.means,
    setUp_pct: Math.sqrt((time_pct * time_pct + inSample_frac * unit_pct * unit_pct) / setUpSampleCount),
  };
}

/** v_n / u^2: what the mean of one sample keeps of the unit variance. */
function shareInSampleMean_frac({ strokeShare_frac, sampleCount, boreCount }: AfterSetUpInput): number {
  return strokeShare_frac / Math.ceil(sampleCount / boreCount) + (1 - strokeShare_frac) / sampleCount;
}

/** Two-sided share of a centred normal outside +- limit. */
function outside({ limit_pct, variance_pct2 }: { limit_pct: number; variance_pct2: number }): number {
  return 2 * normalSurvival(limit_pct / Math.sqrt(variance_pct2));
}

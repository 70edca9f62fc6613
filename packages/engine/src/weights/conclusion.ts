import { areAllEqual } from './are-all-equal.ts';
import { leastCount } from './least-count.ts';
import { namedCapsule } from './limit-verdicts.ts';
import type { Conclusion, LimitVerdict, NamedCapsule, Revolution, TestVerdict } from './weights-judgement.ts';
import type { TareOfWeights } from './net-masses.ts';
import type { StepOfPin, WeightsInput } from './weights-input.ts';

/** What the conclusion is drawn from. */
export interface Findings {
  readonly input: WeightsInput;
  readonly tared: TareOfWeights;
  readonly mean_mg: number;
  readonly limits: readonly LimitVerdict[];
  readonly tests: readonly TestVerdict[];
  readonly revolution: Revolution | undefined;
}

/**
 * The one sentence that comes first. A failed test or a capsule outside comes before any advice on the mean; an odd place
 * comes before both, since it explains them; of release data only tests speak.
 *
 * @param found - verdicts, mean and revolution
 * @returns a code with its numbers
 * @throws nothing
 * @source practice of this project: leave alone, one step of one pin, or stop and investigate; never "repeat"
 * @validity advice; a person decides
 */
export function conclusion(found: Findings): Conclusion {
  return sameEverywhere(found) ?? placeFault(found) ?? failure(found) ?? releaseOutcome(found) ?? adviceOnMean(found);
}

function sameEverywhere({ input }: Findings): Conclusion | undefined {
  const [first] = input.capsules;
  return first && areAllEqual(input)
    ? { code: 'all-equal', mass_mg: first.mass_mg, capsuleCount: input.capsules.length }
    : undefined;
}

function placeFault({ revolution }: Findings): Conclusion | undefined {
  if (!revolution) return undefined;
  const rest = { restMean_mg: revolution.restMean_mg, restCount: revolution.restCount };
  const worst = (places: Revolution['columns']): Revolution['columns'][number] | undefined =>
    places.filter(({ isOdd }) => isOdd).sort((a, b) => Math.abs(b.effect_mg) - Math.abs(a.effect_mg))[0];
  const [column, group] = [worst(revolution.columns), worst(revolution.groups)];
  const adjuster = revolution.causes[0]?.isLikely ? revolution.causes[0].cause.adjuster : undefined;
  const named = adjuster === undefined ? {} : { adjuster };
  const isColumn = column && (!group || Math.abs(column.effect_mg) >= Math.abs(group.effect_mg));
  if (isColumn)
    return { code: 'free-place', kind: 'column', column: column.index, ...named, effect_mg: column.effect_mg, ...rest };
  if (group) return { code: 'free-place', kind: 'group', group: group.index, effect_mg: group.effect_mg, ...rest };
  const bore = revolution.bores.find(({ isOdd }) => isOdd);
  if (!bore) return undefined;
  const { group: ofGroup, column: ofColumn, effect_mg } = bore;
  return { code: 'free-place', kind: 'bore', group: ofGroup, column: ofColumn, effect_mg, ...rest };
}

function failure(found: Findings): Conclusion | undefined {
  const { tests, limits } = found;
  const failed = tests.find(({ verdict }) => verdict === 'fail');
  if (failed) return { code: 'stop-and-investigate', why: 'test', outsideCount: failed.outside.length };
  const single = limits.find(({ what, verdict }) => what === 'single' && verdict === 'fail');
  if (isShiftAlone(found)) return undefined;
  return single && { code: 'stop-and-investigate', why: 'single', outsideCount: single.outside.length };
}

/** In a trial: with the mean brought to the target, every capsule would be inside. */
function isShiftAlone({ input, tared, limits, mean_mg }: Findings): boolean {
  const [mean, single] = (['mean', 'single'] as const).map((kind) => limits.find(({ what }) => what === kind));
  if (input.purpose !== 'trial' || mean?.verdict !== 'fail' || !single || !tared.masses) return false;
  const shift_mg = input.target_mg! - mean_mg;
  const { netLow_mg, netHigh_mg } = single;
  return tared.masses.net_mg.every((net_mg) => net_mg + shift_mg >= netLow_mg && net_mg + shift_mg <= netHigh_mg);
}

function releaseOutcome({ input, tests, mean_mg }: Findings): Conclusion | undefined {
  if (input.purpose === 'trial' || tests.length === 0) return undefined;
  const more = tests.find(({ next }) => next === 'test-further-units');
  if (more) {
    const neededCount = more.test === 'supplement-mass' ? 40 : 20;
    return { code: 'weigh-more', test: more.test, neededCount };
  }
  if (input.purpose !== 'release') return undefined;
  const open = tests.find(({ verdict }) => verdict === 'cannot-tell');
  if (open) return { code: 'no-verdict', test: open.test, reason: open.reasons[0]! };
  return { code: 'passes', tests: [...new Set(tests.map(({ test }) => test))], mean_mg };
}

function adviceOnMean(found: Findings): Conclusion {
  const { input, tared, mean_mg } = found;
  const capsuleCount = input.capsules.length;
  const neededCount = leastCount(input);
  if (capsuleCount < neededCount) return { code: 'not-enough-data', capsuleCount, neededCount, ...onlyOf(found) };
  if (!tared.masses) return { code: 'net-not-known', mean_mg };
  const mean = found.limits.find(({ what }) => what === 'mean');
  return mean ? adviceByLimit(found, mean) : { code: 'no-limits', mean_mg, capsuleCount };
}

function onlyOf({ input, mean_mg }: Findings): { readonly only?: NamedCapsule } {
  if (input.capsules.length !== 1) return {};
  const of = { index: 0, net_mg: mean_mg, target_mg: input.target_mg ?? mean_mg };
  return { only: namedCapsule(input, of) };
}

function adviceByLimit({ input, tared, mean_mg }: Findings, mean: LimitVerdict): Conclusion {
  const target_mg = input.target_mg!;
  if (mean.verdict === 'pass') return { code: 'leave-alone', mean_mg, target_mg };
  if (mean.verdict === 'cannot-tell')
    return { code: 'mean-cannot-be-told', mean_mg, tareStandardError_mg: tared.tare?.standardError_mg ?? NaN };
  const off_mg = mean_mg - target_mg;
  const step = off_mg < 0 ? input.corrections?.under : input.corrections?.over;
  return step ? turnOf(step, { mean_mg, off_mg }) : { code: 'mean-outside', mean_mg, off_mg };
}

/** Whole steps that bring the mean nearest to the target. */
function turnOf(step: StepOfPin, { mean_mg, off_mg }: { mean_mg: number; off_mg: number }): Conclusion {
  const stepCount = Math.max(1, Math.round(Math.abs(off_mg) / step.change_mg_per_step));
  const change_mg = stepCount * step.change_mg_per_step;
  return {
    ...{ code: 'turn', adjuster: step.adjuster, stepCount, step_mm: step.step_mm },
    direction: off_mg < 0 ? 'deeper' : 'higher',
    ...{ mean_mg, expected_mg: off_mg < 0 ? mean_mg + change_mg : mean_mg - change_mg },
  };
}

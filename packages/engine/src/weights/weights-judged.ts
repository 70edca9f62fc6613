import { DomainError } from '#catalogue';
import { limitCard, type LimitCard } from '#design';
import { fromStats } from '#statistics';
import { assuranceOfWeights } from './assurance-of-weights.ts';
import { capabilityOfWeights } from './capability-of-weights.ts';
import { conclusion } from './conclusion.ts';
import { histogram } from './histogram.ts';
import { limitVerdicts, namedCapsule } from './limit-verdicts.ts';
import { massSummary } from './mass-summary.ts';
import { netFromGross } from './net-from-gross.ts';
import { netSummary } from './net-summary.ts';
import { netMasses, type TareOfWeights } from './net-masses.ts';
import { notesOf } from './notes-of.ts';
import { outliers } from './outliers.ts';
import { revolutionOf } from './revolution-of.ts';
import { testVerdicts } from './test-verdicts.ts';
import type { MassSummary, Verdict, WeightsJudgement } from './weights-judgement.ts';
import type { WeightsInput } from './weights-input.ts';

/**
 * All that a column of weights says: summary, net from gross, each named test under the rules of conduct, in-process limits,
 * and one conclusion first.
 *
 * @param input - weights with what is known of them; masses finite and above 0
 * @returns plain data; the overall verdict is the worst of limits and tests (tests of trial data decide nothing), cannot-tell
 *   when nothing was asked
 * @throws DomainError "not-positive" (a mass that is not a finite number above 0, a target), "out-of-range" (limits that
 *   exclude each other, a gross mass not above its shell, loads, assay)
 * @source each part names its own
 * @validity as each test and limit says; advice, a person decides
 */
export function weightsJudged(input: WeightsInput): WeightsJudgement {
  requireMasses(input);
  requireLimits(input);
  const tared = netMasses(input);
  requireFill(input, tared);
  return fromStats(() => judgement(input, tared));
}

function judgement(given: WeightsInput, tared: TareOfWeights): WeightsJudgement {
  const { masses } = tared;
  const masses_mg = given.capsules.map(({ mass_mg }) => mass_mg);
  const told_mg = masses?.net_mg ?? masses_mg;
  const mean_mg = meanOf(told_mg);
  const input = withContents(given, masses ? mean_mg : undefined);
  const revolution = revolutionOf(input, told_mg);
  const limits = limitVerdicts(input, tared);
  const tests = testVerdicts(input, tared, revolution !== undefined || input.wheel !== undefined);
  const card = cardOf(input, tared);
  const summaries = summariesOf(input, tared);
  const netFrom = netFromGross(tared, summaries.gross);
  const far = outliers(masses_mg).map((index) =>
    namedCapsule(input, { index, net_mg: told_mg[index]!, target_mg: mean_mg }),
  );
  const forecast: Forecast = revolution ? { assurance: [], revolution } : forecastOf(input, summaries.net, card);
  const found = { input, tared, mean_mg, limits, tests, revolution };
  const noted = { input, netFrom, outlierCount: far.length, card, hasCapability: forecast.capability !== undefined };
  return {
    verdict: worst(input, [...limits, ...(input.purpose === 'trial' ? [] : tests)]),
    ...{ purpose: input.purpose, conclusion: conclusion(found) },
    ...{ ...summaries, netFrom, outliers: far, tests, limits, ...forecast },
    ...(masses ? { net_mg: told_mg, ...barsOf(told_mg, card) } : {}),
    ...(card && tared.tare ? { card } : {}),
    notes: notesOf(noted),
  };
}

/** One weight has no spread, and no summary. */
function summariesOf({ capsules, basis }: WeightsInput, tared: TareOfWeights): Pick<WeightsJudgement, 'gross' | 'net'> {
  if (capsules.length < 2) return {};
  return {
    ...(basis === 'gross' ? { gross: massSummary(capsules.map(({ mass_mg }) => mass_mg)) } : {}),
    ...(tared.masses ? { net: netSummary(tared.masses.net_mg, tared) } : {}),
  };
}

/** A content that belongs to the target goes with the mean that was found. */
function withContents(input: WeightsInput, mean_mg: number | undefined): WeightsInput {
  if (!input.substances || mean_mg === undefined) return input;
  const substances = input.substances.map(({ contentAt_mg = mean_mg, ...substance }) => ({
    ...substance,
    content_pct: (substance.content_pct * mean_mg) / contentAt_mg,
  }));
  return { ...input, substances };
}

type Forecast = Pick<WeightsJudgement, 'assurance' | 'capability' | 'revolution'>;

/** What the sample says of others: nothing when it is one revolution, which is one moment. */
function forecastOf(input: WeightsInput, net: MassSummary | undefined, card: LimitCard | undefined): Forecast {
  const capability = capabilityOfWeights(net, card);
  return { assurance: assuranceOfWeights(input, net), ...(capability ? { capability } : {}) };
}

function barsOf(net_mg: readonly number[], card: LimitCard | undefined): Pick<WeightsJudgement, 'histogram'> {
  return net_mg.length > 0 ? { histogram: histogram(net_mg, card) } : {};
}

function requireMasses({ capsules, shells_mg = [], target_mg }: WeightsInput): void {
  const positive = (field: string, value: number | undefined): void => {
    if (value !== undefined && !(Number.isFinite(value) && value > 0))
      throw new DomainError('not-positive', { field, value });
  };
  for (const { mass_mg, shell_mg } of capsules) {
    positive('mass_mg', mass_mg);
    positive('shell_mg', shell_mg);
  }
  for (const shell_mg of shells_mg) positive('shells_mg', shell_mg);
  positive('target_mg', target_mg);
}

/** Limits that no capsule, or no mean of capsules, could be judged by. */
function requireLimits({ limits }: WeightsInput): void {
  if (!limits) return;
  const { meanAction_pct, individualAction_pct, individualAlert_pct = individualAction_pct } = limits;
  const within = (field: string, value: number, bound: { readonly below?: number; readonly max?: number }): void => {
    const { below = Infinity, max = Infinity } = bound;
    if (!(value > 0 && value < below && value <= max))
      throw new DomainError('out-of-range', { field, value, above: 0, ...bound });
  };
  within('individualAction_pct', individualAction_pct, { below: 100 });
  within('meanAction_pct', meanAction_pct, { max: individualAction_pct });
  within('individualAlert_pct', individualAlert_pct, { max: individualAction_pct });
}

/** A capsule that weighs no more than its shell holds nothing: shells of another lot, or net taken for gross. */
function requireFill({ capsules }: WeightsInput, { masses }: TareOfWeights): void {
  for (const [i, net_mg] of (masses?.net_mg ?? []).entries()) {
    if (net_mg > 0) continue;
    const { mass_mg, line = i + 1 } = capsules[i]!;
    throw new DomainError('out-of-range', {
      row: line,
      field: 'mass_mg',
      value: mass_mg,
      above: masses!.shells_mg[i]!,
    });
  }
}

function meanOf(masses_mg: readonly number[]): number {
  return masses_mg.reduce((sum, mass_mg) => sum + mass_mg, 0) / masses_mg.length;
}

/** The limit card for these shells; for net weights the limits without gross, for the histogram only. */
function cardOf({ target_mg, limits, tare: given }: WeightsInput, tared: TareOfWeights): LimitCard | undefined {
  if (target_mg === undefined || !limits) return undefined;
  const { shellCount = 0 } = tared.tare ?? {};
  const isOfBrief = tared.tare !== undefined && given !== undefined && tared.tare.mean_mg === given.mean_mg;
  const basis = shellCount > 0 || tared.way === 'net-given' ? 'measured' : 'guess';
  const found = { mean_mg: 0, sd_mg: 0, shellCount, standardError_mg: 0, ...tared.tare, basis } as const;
  return limitCard({ target_mg, limits, tare: isOfBrief ? given : found });
}

function worst({ capsules }: WeightsInput, verdicts: readonly { readonly verdict: Verdict }[]): Verdict {
  const has = (verdict: Verdict): boolean => verdicts.some((each) => each.verdict === verdict);
  if (has('fail')) return 'fail';
  return capsules.length === 0 || verdicts.length === 0 || has('cannot-tell') ? 'cannot-tell' : 'pass';
}

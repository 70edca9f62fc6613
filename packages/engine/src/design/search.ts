import { targetFill, type TargetFill } from '#brief';
import { isSizeMounted, type Filler } from '#fillers';
import {
  DOSING_METHODS,
  gains,
  intervalOfMean,
  parameterDraws,
  type DosingContext,
  type DosingMethod,
  type Prediction,
} from '#dosing';
import { completedPowder } from '#materials';
import { shellGeometry, type ShellRecord } from '#shells';
import { afterSetUp } from './after-set-up.ts';
import type { Brief } from './brief.ts';
import type { Candidate, Design, RankedCandidate, Rejection } from './candidate.ts';
import { expectedWeights } from './expected-weights.ts';
import { DEFAULT_SAMPLE_COUNT, limitCard } from './limit-card.ts';
import { meritsOf } from './merits.ts';
import { paretoFront } from './pareto-front.ts';
import { ranking } from './ranking.ts';
import { routeOutlook } from './route-outlook.ts';
import { tareOf } from './tare.ts';

export interface SearchInput {
  readonly brief: Brief;
  readonly filler: Filler;
  /** Figures of the shells that the brief names, one for each in its order. */
  readonly shells: readonly ShellRecord[];
  readonly seed: number;
}

/** Spread between sampling times without a record. @source common practice, no source */
const GUESSED_BETWEEN_TIMES = { mean_pct: 1, sd_pct: 0.3 } as const;

/**
 * Searches all shells, ways of dosing and parts in stock for set-ups that give the target, and ranks them.
 *
 * @param input - the brief, its filler and shells, and the seed of the parameter draws
 * @returns the first Pareto front in order, with set-up sheet, limit card, forecast and outlook; the rest; every rejection
 * @throws DomainError when the target cannot be set (see `targetFill`) or the powder contradicts itself
 * @source see the entries of the rooms; ranking after set-up, not by the ignorance before the first trial
 * @validity a first set-up for a trial; the registered dossier and qualified people decide
 */
export function search(input: SearchInput): Design {
  const { brief, filler, seed } = input;
  const target = targetFill(brief.parts[0].target);
  const rejections: Rejection[] = [];
  const found = input.shells.flatMap((record, shellIndex) =>
    candidatesIn(input, { record, shellIndex, target, rejections }),
  );
  const rigid = found.filter(({ candidate }) => candidate.prediction.fit === 'rigid');
  for (const { candidate } of found) {
    if (rigid.length === 0 || candidate.prediction.fit === 'rigid') continue;
    const { released_mm, longest_mm } = candidate.prediction;
    const reason = { code: 'by-crumbling', numbers: { released_mm, longest_mm }, rule: 'shells.slug-fit' } as const;
    rejections.push({ size: candidate.size, method: candidate.method, parts: candidate.settings.parts, reason });
  }
  const kept = rigid.length > 0 ? rigid : found;
  const front = [...paretoFront(kept.map(({ candidate }) => candidate))].sort((a, b) => ranking(a, b).order);
  return {
    format: 1,
    product: { code: brief.product.code, name: brief.product.name },
    filler: { id: filler.id, name: filler.name },
    seed,
    target,
    candidates: front.map((candidate, i) => {
      const next = front[i + 1];
      const at = kept.find((one) => one.candidate === candidate);
      if (!at) throw new Error('a ranked candidate was not found again');
      const decided = next ? { decidedBy: ranking(candidate, next).by } : {};
      return { ...ranked(input, { ...at, target }), rank: i + 1, ...decided };
    }),
    behind: kept.map(({ candidate }) => candidate).filter((candidate) => !front.includes(candidate)),
    rejections,
  };
}

interface Found {
  readonly candidate: Candidate;
  readonly method: DosingMethod;
  readonly context: DosingContext;
  readonly record: ShellRecord;
  /** Place of the shell in the brief. */
  readonly shellIndex: number;
}

function candidatesIn(
  input: SearchInput,
  at: { record: ShellRecord; shellIndex: number; target: TargetFill; rejections: Rejection[] },
): readonly Found[] {
  const { record, rejections } = at;
  const shell = shellGeometry(record);
  if (shell.kind === 'cannot-tell') {
    const reason = {
      code: 'no-geometry',
      numbers: { missing: shell.missing.join(', ') },
      rule: 'shells.slug-fit',
    } as const;
    rejections.push({ size: record.size, reason });
    return [];
  }
  const { brief, filler } = input;
  const recorded = brief.record?.unit_pct;
  const context: DosingContext = {
    material: completedPowder(brief.parts[0].material),
    filler,
    shell,
    below_mm3: 0,
    ...(brief.validated ? { validated: validatedRanges(brief.validated) } : {}),
    ...(recorded ? { recordedUnit_pct: recorded } : {}),
  };
  return DOSING_METHODS.flatMap((method) => byMethod(input, { ...at, method, context }));
}

function byMethod(
  input: SearchInput,
  at: {
    record: ShellRecord;
    shellIndex: number;
    target: TargetFill;
    rejections: Rejection[];
    method: DosingMethod;
    context: DosingContext;
  },
): readonly Found[] {
  const { record, shellIndex, target, rejections, method, context } = at;
  const { size } = record;
  const suitability = method.accepts(context);
  if (suitability.grade === 'unsuitable') {
    rejections.push(...suitability.reasons.map((reason) => ({ size, method: method.id, reason })));
    return [];
  }
  return method.solve(context, target.fill_mg).flatMap((solution): readonly Found[] => {
    if (solution.kind === 'unsolved') {
      rejections.push({ size, method: method.id, parts: solution.parts, reason: solution.reason });
      return [];
    }
    const { settings } = solution;
    const prediction = method.predict(context, settings);
    const reason = unfit(prediction);
    if (reason) {
      rejections.push({ size, method: method.id, parts: settings.parts, reason });
      return [];
    }
    const set = afterSetUpOf(input, prediction);
    const isSizeChange = !isSizeMounted(context.filler, size);
    const merits = meritsOf({ method, context, settings, prediction, afterSetUp: set, isSizeChange });
    const candidate = {
      size,
      geometry: context.shell,
      method: method.id,
      suitability,
      settings,
      prediction,
      afterSetUp: set,
      merits,
    };
    return [{ candidate, method, context, record, shellIndex }];
  });
}

function unfit(prediction: Prediction): Rejection['reason'] | undefined {
  const { fit, released_mm, longest_mm } = prediction;
  if (fit === 'does-not-fit') return { code: fit, numbers: { released_mm, longest_mm }, rule: 'shells.slug-fit' };
  return prediction.warnings.find(({ code }) => code === 'slug-wider-than-body');
}

function afterSetUpOf({ brief, filler }: SearchInput, { spread }: Prediction): ReturnType<typeof afterSetUp> {
  const stroke = spread.components.filter(({ sharedBy }) => sharedBy === 'stroke');
  const stroke_pct2 = stroke.reduce((sum, { sd_pct }) => sum + sd_pct * sd_pct, 0);
  return afterSetUp({
    unit: { mean_pct: spread.unit_pct, sd_pct: spread.unsure_pct },
    strokeShare_frac: stroke_pct2 / (spread.unit_pct * spread.unit_pct),
    betweenTimes: betweenTimesOf(brief),
    sampleCount: brief.inProcess.sampleCount ?? DEFAULT_SAMPLE_COUNT,
    boreCount: filler.carriers.boreCount,
    setUpSampleCount: brief.record?.setUpSampleCount ?? 1,
    limits: brief.inProcess,
  });
}

function betweenTimesOf(brief: Brief): { mean_pct: number; sd_pct: number } {
  const recorded = brief.record?.betweenTimes_pct;
  return recorded ? { mean_pct: recorded.mean, sd_pct: recorded.sd } : GUESSED_BETWEEN_TIMES;
}

function ranked(input: SearchInput, at: Found & { target: TargetFill }): Omit<RankedCandidate, 'rank'> {
  const { brief, seed } = input;
  const { candidate, method, context, record, target } = at;
  const { settings, prediction, afterSetUp: set } = candidate;
  const evaluate = method.evaluator(context, settings);
  const parameters = method.parameters(context, settings);
  const draws = parameterDraws(parameters, seed);
  const interval = intervalOfMean({ parameters, evaluate, draws });
  const gained = gains({ method, context, settings, draws, interval });
  const unit = { mean_pct: prediction.spread.unit_pct, sd_pct: prediction.spread.unsure_pct };
  const betweenTimes_pct = betweenTimesOf(brief).mean_pct;
  const { meanAction_pct } = brief.inProcess;
  const shell = brief.shells[at.shellIndex];
  const tare = shell ? tareOf(shell, record) : undefined;
  return {
    ...candidate,
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

function validatedRanges(validated: NonNullable<Brief['validated']>): NonNullable<DosingContext['validated']> {
  return {
    ...(validated.pinDepth ? { pinDepth: validated.pinDepth } : {}),
    ...(validated.discHeight ? { discHeight: validated.discHeight } : {}),
  };
}

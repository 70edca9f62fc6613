import { discHeight_mm, discsFor, springSets, type DiscPart, type SpringPart } from '#fillers';
import type { DosingContext, Settings, Solution } from '../dosing.ts';
import type { Finding } from '../finding.ts';
import { valuesAtMeans } from '../parameter-values.ts';
import { validatedDepths } from './adjusters.ts';
import { DISC_SLOT, pinKey, SPRING_SLOT } from './keys.ts';
import { parameters } from './parameters.ts';
import { runOfValues } from './run-of-values.ts';
import { setUpOf } from './set-up.ts';
import { tamp, tampColumns } from './tamp.kernel.ts';

/** Shares of the total depth for four working pins and a flush one. @source common practice, no source */
const FOUR_PINS = [0.45, 0.28, 0.17, 0.1] as const;
/** Each pin's share of the one before it, for other numbers of pins. @source common practice, no source */
const SHARE_OF_PIN_BEFORE = 0.62;
/** Leave 1e-8 mm of the depth, far below a step of any machine. */
const HALVINGS = 30;

/**
 * Pin depths that give the target, for every disc and spring set in stock for the shell.
 *
 * The total depth is found with the station model and rounded to the step of the machine; the larger pins take their
 * shares, rounded, and the smallest the rest. The last pin stays flush.
 *
 * @param context - material, filler and shell
 * @param target_mg - target mass of the dose
 * @returns one solution per disc and spring set: settings, or the reason with its numbers
 * @throws DomainError "not-a-number" (a prior without a finite sd)
 * @source split of the depth: common practice, no source; the mass: this project's station model
 * @validity settings for a first trial
 */
export function solve(context: DosingContext, target_mg: number): readonly Solution[] {
  const { filler, shell } = context;
  const discs = discsFor(filler, shell.size);
  if (discs.length === 0) return [unsolved({}, 'no-disc-for-size', { size: shell.size })];
  return discs.flatMap((disc) => springSets(filler).map((springs) => solveWith(context, { disc, springs, target_mg })));
}

interface Task {
  readonly disc: DiscPart;
  readonly springs: SpringPart;
  readonly target_mg: number;
}

function solveWith(context: DosingContext, { disc, springs, target_mg }: Task): Solution {
  const parts = { [DISC_SLOT]: disc.number, [SPRING_SLOT]: springs.number };
  const height_mm = discHeight_mm(disc);
  const validated = validatedDepths(context);
  if (2 * context.shell.bodyInnerRadius_mm <= (disc.boreMeasured_mm ?? disc.boreNominal_mm))
    return unsolved(parts, 'bore-too-wide', {
      bore_mm: disc.boreNominal_mm,
      body_mm: 2 * context.shell.bodyInnerRadius_mm,
    });
  const range = context.validated?.['discHeight'];
  if (range && !(height_mm >= range.min_mm && height_mm <= range.max_mm))
    return unsolved(parts, 'disc-outside-validated', { height_mm, min_mm: range.min_mm, max_mm: range.max_mm });
  const step_mm = stepOf(context);
  const shares = sharesOf(workingPins(context));
  const massAt_mg = massOfDepth(context, { parts, shares });
  const deepest_mm = Math.min(context.filler.pins.machineRange.max_mm, height_mm - 1) / (shares[0] ?? 1);
  const [flush_mg, most_mg] = [massAt_mg(0), massAt_mg(deepest_mm)];
  if (flush_mg >= target_mg) return unsolved(parts, 'disc-too-tall', { height_mm, flush_mg, target_mg });
  if (most_mg < target_mg) return unsolved(parts, 'pins-cannot-reach', { height_mm, most_mg, target_mg });
  const total_mm = Math.round(depthFor(massAt_mg, { target_mg, deepest_mm }) / step_mm) * step_mm;
  const settings: Settings = { parts, values: splitDepths(context, { total_mm, step_mm }) };
  const outside = Object.values(settings.values).find(
    (depth_mm) => depth_mm > validated.max_mm || depth_mm < validated.min_mm,
  );
  if (outside !== undefined)
    return unsolved(parts, 'outside-validated', {
      depth_mm: outside,
      min_mm: validated.min_mm,
      max_mm: validated.max_mm,
    });
  return { kind: 'solved', settings };
}

function unsolved(parts: Settings['parts'], code: Finding['code'], numbers: Finding['numbers']): Solution {
  return { kind: 'unsolved', parts, reason: { code, numbers, rule: 'dosing.disc-stations' } };
}

/** Mass at the means of all parameters for a total depth, unrounded. */
function massOfDepth(
  context: DosingContext,
  { parts, shares }: { parts: Settings['parts']; shares: readonly number[] },
): (total_mm: number) => number {
  const flush = { parts, values: splitDepths(context, { total_mm: 0, step_mm: stepOf(context) }) };
  const run = runOfValues(context, setUpOf(context, flush))(valuesAtMeans(parameters(context, flush)));
  const out = tampColumns(run.depths_mm.length);
  return (total_mm) => {
    tamp({ ...run, depths_mm: run.depths_mm.map((_, k) => (shares[k] ?? 0) * total_mm) }, out);
    return out.masses_mg.at(-1) ?? NaN;
  };
}

/** Total depth at which the mass meets the target; the mass never falls with depth. */
function depthFor(massAt_mg: (total_mm: number) => number, goal: { target_mg: number; deepest_mm: number }): number {
  let [low_mm, high_mm] = [0, goal.deepest_mm];
  for (let i = 0; i < HALVINGS; i++) {
    const middle_mm = (low_mm + high_mm) / 2;
    if (massAt_mg(middle_mm) < goal.target_mg) low_mm = middle_mm;
    else high_mm = middle_mm;
  }
  return (low_mm + high_mm) / 2;
}

/** All pins but the last; a filler with a single pin has no flush one. */
function workingPins({ filler }: DosingContext): number {
  return Math.max(1, filler.pins.scales.length - 1);
}

function sharesOf(pinCount: number): readonly number[] {
  if (pinCount === FOUR_PINS.length) return FOUR_PINS;
  const raw = [1];
  while (raw.length < pinCount) raw.push((raw.at(-1) ?? 0) * SHARE_OF_PIN_BEFORE);
  const sum = raw.reduce((total, share) => total + share, 0);
  return raw.map((share) => share / sum);
}

function stepOf({ filler }: DosingContext): number {
  const steps = filler.pins.scales.map(
    ({ step_division, pitch_mm_per_division }) => step_division * pitch_mm_per_division,
  );
  return Math.max(...steps);
}

/** Depth of every pin for a total depth, on the steps of the machine. */
function splitDepths(
  context: DosingContext,
  { total_mm, step_mm }: { total_mm: number; step_mm: number },
): Settings['values'] {
  const pinCount = workingPins(context);
  const shares = sharesOf(pinCount);
  const depths_mm = shares.map((share) => onStep(share * total_mm, step_mm));
  const larger_mm = depths_mm.slice(0, -1).reduce((sum, depth) => sum + depth, 0);
  depths_mm[pinCount - 1] = Math.max(0, onStep(total_mm - larger_mm, step_mm));
  return Object.fromEntries(context.filler.pins.scales.map(({ station }, i) => [pinKey(station), depths_mm[i] ?? 0]));
}

/** Rounded to the step, and the last binary digits cleaned so that 3.5 prints as 3.5. */
function onStep(depth_mm: number, step_mm: number): number {
  return Math.round(Math.round(depth_mm / step_mm) * step_mm * 1e6) / 1e6;
}

import { FILL_WORDS } from '@fillwright/words/en';
import { depthAfterDrag, type Drag } from './depth-after-drag.ts';
import { depthAfterSteps, depthWithin, type DepthFound } from './depth-after-steps.ts';
import { depthOfText, readingsOf } from './depth-of-text.ts';
import type { Lever } from './lever.ts';
import { scaleText } from './scale-text.ts';

/** What a person does to a pin. Steps above 0 lower it. */
export type LeverAct =
  | { readonly kind: 'steps'; readonly count: number }
  | { readonly kind: 'end'; readonly end: 'shallow' | 'deep' }
  | { readonly kind: 'typed'; readonly text: string }
  | ({ readonly kind: 'drag' } & Drag);

/** Carries an act out; says whether it could be. */
export type CarryOut = (act: LeverAct, phase: 'moving' | 'settled') => boolean;

/** Where the pin goes, or one sentence why it stays. */
export type LeverMove =
  { readonly kind: 'to'; readonly depth_mm: number } | { readonly kind: 'stays'; readonly why: string };

/**
 * What an act does to a pin; nothing is clamped, an act that cannot be carried out is refused with a sentence.
 *
 * @param lever - the pin as it stands
 * @param act - of the person
 * @returns the new depth, or why there is none
 */
export function leverMove(lever: Lever, act: LeverAct): LeverMove {
  if (act.kind === 'typed') return typedMove(lever, act.text);
  const found = foundBy(lever, act);
  return found.kind === 'depth' ? { kind: 'to', depth_mm: found.depth_mm } : { kind: 'stays', why: beyond(lever) };
}

function foundBy(lever: Lever, act: Exclude<LeverAct, { kind: 'typed' }>): DepthFound {
  if (act.kind === 'steps') return depthAfterSteps(lever, act.count);
  if (act.kind === 'drag') return depthAfterDrag(lever, act);
  const { min_mm, max_mm } = lever.validated;
  return depthWithin(lever.machine, act.end === 'shallow' ? min_mm : max_mm);
}

function typedMove(lever: Lever, text: string): LeverMove {
  const typed = depthOfText(lever, text);
  if (typed.kind === 'depth') return { kind: 'to', depth_mm: typed.depth_mm };
  if (typed.kind === 'not-a-number') return { kind: 'stays', why: FILL_WORDS.notAReading(text.trim()) };
  if (typed.kind === 'beyond-machine') return { kind: 'stays', why: beyond(lever) };
  const shown = shownOn(lever);
  const [lower, upper] = [shown(typed.lower_division), shown(typed.upper_division)];
  const step = shown(lever.mounted.scale.step_division);
  return { kind: 'stays', why: FILL_WORDS.offStep({ text: text.trim(), step, lower, upper }) };
}

function beyond(lever: Lever): string {
  const { low_division, high_division } = readingsOf(lever);
  const shown = shownOn(lever);
  return FILL_WORDS.beyondMachine({
    station: lever.station,
    low: shown(low_division),
    high: shown(high_division),
  });
}

function shownOn({ mounted }: Lever): (reading_division: number) => string {
  return (reading_division) => scaleText(reading_division, mounted.scale.step_division);
}

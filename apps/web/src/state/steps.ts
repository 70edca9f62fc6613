import { stepPlace } from './step-place.ts';
import type { Choice } from './workbench-state.ts';

/** What one step of undo gives back. */
export interface Step {
  readonly text: string;
  readonly choice?: Choice;
}

const MOST_STEPS = 200;
/** Changes of one place that follow each other faster make one step. */
const PAUSE_ms = 1000;

/** Steps back and forth. Immutable. */
export interface Steps {
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  /** The change that may still go on: where and when it was made last. */
  readonly open?: { readonly place: string; readonly at_ms: number };
}

export const NO_STEPS: Steps = { past: [], future: [] };

/**
 * A step is made: it can be undone, and nothing redone. What goes on at the same place without a pause belongs to the
 * step before, as typing and a held key do.
 *
 * @param steps - the steps so far
 * @param made - what was, what will be, and when
 * @returns the steps with this one
 */
export function stepped(
  steps: Steps,
  made: { readonly before: Step; readonly after: Step; readonly at_ms: number },
): Steps {
  const { before, after, at_ms } = made;
  const place = stepPlace(before, after);
  const open = place === undefined ? {} : { open: { place, at_ms } };
  const goesOn = place !== undefined && steps.open?.place === place && at_ms - steps.open.at_ms < PAUSE_ms;
  return { past: goesOn ? steps.past : [...steps.past, before].slice(-MOST_STEPS), future: [], ...open };
}

/** One step back from `now`. @returns the step to go to and the steps left, or undefined */
export function undone(steps: Steps, now: Step): { readonly to: Step; readonly steps: Steps } | undefined {
  const to = steps.past.at(-1);
  return to && { to, steps: { past: steps.past.slice(0, -1), future: [now, ...steps.future] } };
}

/** One step forth from `now`. @returns the step to go to and the steps left, or undefined */
export function redone(steps: Steps, now: Step): { readonly to: Step; readonly steps: Steps } | undefined {
  const [to, ...future] = steps.future;
  return to && { to, steps: { past: [...steps.past, now], future } };
}

import type { Choice } from './workbench-state.ts';

/** What one step of undo gives back. */
export interface Step {
  readonly text: string;
  readonly choice?: Choice;
}

const MOST_STEPS = 200;

/** Steps back and forth. Immutable. */
export interface Steps {
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

export const NO_STEPS: Steps = { past: [], future: [] };

/** A step was made from `before`: it can be undone, and nothing redone. */
export function stepped(steps: Steps, before: Step): Steps {
  return { past: [...steps.past, before].slice(-MOST_STEPS), future: [] };
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

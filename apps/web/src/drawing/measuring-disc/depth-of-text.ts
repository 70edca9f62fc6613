import { depthOfReading_mm, readingOfDepth_division } from '@fillwright/engine/fillers';
import { parseTypedNumber } from '../../fields/parse-typed-number.ts';
import { depthWithin } from './depth-after-steps.ts';
import type { Lever } from './lever.ts';

/** What a typed reading means for a pin; whatever is not a depth is refused with a sentence. */
export type TypedDepth =
  | { readonly kind: 'depth'; readonly depth_mm: number }
  | { readonly kind: 'not-a-number' }
  | { readonly kind: 'off-step'; readonly lower_division: number; readonly upper_division: number }
  | { readonly kind: 'beyond-machine'; readonly low_division: number; readonly high_division: number };

const SLACK_steps = 1e-6;

/**
 * Depth of a pin from a reading typed in the machine's own scale, for example `21,5`. Never rounds and never clamps.
 *
 * @param lever - scale, step and range of the pin
 * @param text - as it was typed
 * @returns the depth; or why the scale cannot be set to it
 */
export function depthOfText(lever: Pick<Lever, 'mounted' | 'machine'>, text: string): TypedDepth {
  const typed = parseTypedNumber(text);
  if (typed.kind !== 'number') return { kind: 'not-a-number' };
  const { mounted, machine } = lever;
  const { step_division } = mounted.scale;
  const steps = typed.value / step_division;
  if (Math.abs(steps - Math.round(steps)) > SLACK_steps)
    return {
      kind: 'off-step',
      lower_division: Math.floor(steps) * step_division,
      upper_division: Math.ceil(steps) * step_division,
    };
  const found = depthWithin(machine, depthOfReading_mm(mounted, typed.value));
  if (found.kind === 'depth') return { kind: 'depth', depth_mm: found.depth_mm };
  return { kind: 'beyond-machine', ...readingsOf({ mounted, machine }) };
}

/** The ends of the machine's range as readings, smaller first. @returns both in divisions */
export function readingsOf({ mounted, machine }: Pick<Lever, 'mounted' | 'machine'>): {
  readonly low_division: number;
  readonly high_division: number;
} {
  const [a, b] = [readingOfDepth_division(mounted, machine.min_mm), readingOfDepth_division(mounted, machine.max_mm)];
  return { low_division: Math.min(a, b), high_division: Math.max(a, b) };
}

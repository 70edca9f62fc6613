import { checkValues } from './check-values.ts';
import type { Entry } from './entry.ts';
import type { InputFault } from './input-fault.ts';

/** Outcome of a computation on raw input: its outputs by key, or everything that is wrong with the input. */
export type Computed =
  | { readonly ok: true; readonly outputs: Readonly<Record<string, unknown>> }
  | { readonly ok: false; readonly faults: readonly InputFault[] };

/**
 * Computes a catalogue entry from raw values, after checking every one of them.
 *
 * @param entry - the entry
 * @param raw - input values by key
 * @returns the outputs by key, or the faults of the input
 * @throws DomainError when the values fit their fields one by one but not together
 * @source none: bookkeeping
 */
export function computeEntry(entry: Entry, raw: Readonly<Record<string, unknown>>): Computed {
  const faults = checkValues(entry.inputs, raw);
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, outputs: entry.compute(raw as never) as Readonly<Record<string, unknown>> };
}

import type { Choice } from './workbench-state.ts';

interface Standing {
  readonly text: string;
  readonly choice?: Choice;
}

/**
 * Where a small change was made: one line of the text, or one lever.
 *
 * @param before - text and levers before
 * @param after - and after
 * @returns the place; undefined for anything larger, which is always a step of its own
 */
export function stepPlace(before: Standing, after: Standing): string | undefined {
  if (before.text !== after.text)
    return before.choice === after.choice ? linePlace(before.text, after.text) : undefined;
  return before.choice && after.choice ? leverPlace(before.choice, after.choice) : undefined;
}

function linePlace(before: string, after: string): string | undefined {
  const [was, is] = [before.split('\n'), after.split('\n')];
  if (was.length !== is.length) return undefined;
  const changed = was.flatMap((line, index) => (line === is[index] ? [] : [index]));
  return changed.length === 1 ? `line ${String(changed[0])}` : undefined;
}

function leverPlace(before: Choice, after: Choice): string | undefined {
  const [was, is] = [flat(before), flat(after)];
  const keys = [...new Set([...Object.keys(was), ...Object.keys(is)])].filter((key) => was[key] !== is[key]);
  return keys.length === 1 && keys[0]?.startsWith('value ') ? keys[0] : undefined;
}

function flat({ size, method, settings }: Choice): Readonly<Record<string, string | number>> {
  const named = (what: string, of: Readonly<Record<string, string | number>>): object =>
    Object.fromEntries(Object.entries(of).map(([key, value]) => [`${what} ${key}`, value]));
  return { size, method, ...named('part', settings.parts), ...named('value', settings.values) };
}

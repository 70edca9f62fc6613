import type { DesignChoice } from '@fillwright/contract/documents';
import type { NamedFile } from './named-file.ts';
import type { Choice, RestedFile } from './workbench-state.ts';

const SEED = 1;

/** What a set-up was computed from. */
interface RestedOn {
  /** Version of the brief. */
  readonly version: number;
  readonly files: readonly NamedFile[];
}

/** Text of a design document. */
export function documentChoice({ size, method, settings }: Choice, { version, files }: RestedOn): string {
  const choice: DesignChoice = {
    format: 1,
    briefVersion: Math.max(1, version),
    ...(files.length === 0 ? {} : { files: files.map(({ text: _text, ...read }) => read) }),
    size,
    method,
    ...settings,
    seed: SEED,
  };
  return JSON.stringify(choice, null, 1);
}

/** @returns where the levers stand in a design document; undefined when it cannot be read */
export function choiceIn(text: string): Choice | undefined {
  try {
    const { size, method = '', parts, values } = JSON.parse(text) as Partial<DesignChoice>;
    return size === undefined || !parts || !values ? undefined : { size, method, settings: { parts, values } };
  } catch {
    return undefined;
  }
}

/** @returns the fillers and shells that a design document was computed from, as it has them; none of a text that is no design */
export function restedOn(text: string): readonly RestedFile[] {
  try {
    return (JSON.parse(text) as { readonly files?: readonly RestedFile[] } | null)?.files ?? [];
  } catch {
    return [];
  }
}

/** @returns whether the levers stand alike on the same files, whichever version of the brief they were made on */
export function isSameChoice(one: string, other: string): boolean {
  return one === other || standing(one) === standing(other);
}

function standing(text: string): string {
  const choice = choiceIn(text);
  if (!choice) return text;
  const { parts, values } = choice.settings;
  const sorted = (of: object): unknown => Object.entries(of).sort(([a], [b]) => (a < b ? -1 : 1));
  return JSON.stringify([choice.size, choice.method, sorted(parts), sorted(values), restedOn(text).map(sorted)]);
}

import type { DesignChoice } from '@fillwright/contract/documents';
import { listDocuments, newestVersion } from './documents-client.ts';
import type { NamedFile } from './named-file.ts';
import type { Choice } from './workbench-state.ts';

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

/**
 * The newest design choice of a product.
 *
 * @param id - of the product
 * @returns the choice with version and text; undefined when there is none, or it cannot be read now
 */
export async function openChoice(
  id: string,
): Promise<{ readonly choice: Choice; readonly version: number; readonly text: string } | undefined> {
  try {
    if (!(await listDocuments('design')).some((head) => head.id === id)) return undefined;
    const { version, text } = await newestVersion('design', id);
    const { size, method, parts, values } = JSON.parse(text) as DesignChoice;
    return { choice: { size, method, settings: { parts, values } }, version, text };
  } catch {
    return undefined;
  }
}

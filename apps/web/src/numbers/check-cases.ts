import { judgeCase, type CaseResult, type CheckCase } from '@fillwright/engine/catalogue';
import { findEntry } from '@fillwright/engine/register';

interface GoldenFile {
  readonly default: unknown;
}

/** Files of check values that come with the engine, loaded when a number is first opened. A test holds the list to the folder. */
export const GOLDEN_FILES: Readonly<Record<string, () => Promise<GoldenFile>>> = {
  'acceptance-value': () => import('@fillwright/engine/golden/acceptance-value.json'),
  'by-hand': () => import('@fillwright/engine/golden/by-hand.json'),
  'design-reference': () => import('@fillwright/engine/golden/design-reference.json'),
  'disc-stations': () => import('@fillwright/engine/golden/disc-stations.json'),
  'dosage-units-pass': () => import('@fillwright/engine/golden/dosage-units-pass.json'),
  outlook: () => import('@fillwright/engine/golden/outlook.json'),
  dosing: () => import('@fillwright/engine/golden/dosing.json'),
  'uniformity-of-mass': () => import('@fillwright/engine/golden/uniformity-of-mass.json'),
};

let loaded: Promise<readonly CheckCase[]> | undefined;

async function load(): Promise<readonly CheckCase[]> {
  const files = await Promise.all(Object.values(GOLDEN_FILES).map((file) => file()));
  return files.flatMap((file) => {
    const content = file.default as readonly CheckCase[] | { readonly cases: readonly CheckCase[] };
    return 'cases' in content ? content.cases : content;
  });
}

/**
 * The check values of an entry, recomputed here and now.
 *
 * @param entry - catalogue id
 * @returns expected, got and verdict of each case
 * @throws when the files cannot be loaded
 */
export async function checkedCases(entry: string): Promise<readonly CaseResult[]> {
  loaded ??= load();
  // A file that did not arrive is asked for again next time.
  loaded.catch(() => (loaded = undefined));
  const cases = await loaded;
  return cases.filter(({ method }) => method === entry).map((one) => judgeCase(one, findEntry));
}

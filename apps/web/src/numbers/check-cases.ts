import { judgeCase, type CaseResult, type CheckCase } from '@fillwright/engine/catalogue';
import { findEntry } from '@fillwright/engine/register';

interface GoldenFile {
  readonly default: unknown;
}

/** Files of check values that come with the engine, loaded when a number is first opened. A test holds the list to the folder. */
export const GOLDEN_FILES: Readonly<Record<string, () => Promise<GoldenFile>>> = {
  'aql-lookup': () => import('@fillwright/engine/golden/aql-lookup.json'),
  'aql-oc': () => import('@fillwright/engine/golden/aql-oc.json'),
  'aql-switching': () => import('@fillwright/engine/golden/aql-switching.json'),
  arl: () => import('@fillwright/engine/golden/arl.json'),
  basic_inference: () => import('@fillwright/engine/golden/basic_inference.json'),
  'by-hand': () => import('@fillwright/engine/golden/by-hand.json'),
  capability: () => import('@fillwright/engine/golden/capability.json'),
  chart_constants: () => import('@fillwright/engine/golden/chart_constants.json'),
  charts_data: () => import('@fillwright/engine/golden/charts_data.json'),
  'design-reference': () => import('@fillwright/engine/golden/design-reference.json'),
  'disc-stations': () => import('@fillwright/engine/golden/disc-stations.json'),
  distributions: () => import('@fillwright/engine/golden/distributions.json'),
  doe: () => import('@fillwright/engine/golden/doe.json'),
  dosing: () => import('@fillwright/engine/golden/dosing.json'),
  e2810_bound: () => import('@fillwright/engine/golden/e2810_bound.json'),
  feedback_adjustment: () => import('@fillwright/engine/golden/feedback_adjustment.json'),
  gross_net: () => import('@fillwright/engine/golden/gross_net.json'),
  grr_balance: () => import('@fillwright/engine/golden/grr_balance.json'),
  large_sample_counts: () => import('@fillwright/engine/golden/large_sample_counts.json'),
  nist_strd: () => import('@fillwright/engine/golden/nist_strd.json'),
  outlook: () => import('@fillwright/engine/golden/outlook.json'),
  run_rules: () => import('@fillwright/engine/golden/run_rules.json'),
  'statistics-by-hand': () => import('@fillwright/engine/golden/statistics-by-hand.json'),
  tolerance_intervals: () => import('@fillwright/engine/golden/tolerance_intervals.json'),
  udu_acceptance_value: () => import('@fillwright/engine/golden/udu_acceptance_value.json'),
  udu_oc: () => import('@fillwright/engine/golden/udu_oc.json'),
  uniformity_of_mass: () => import('@fillwright/engine/golden/uniformity_of_mass.json'),
  'variables-plans': () => import('@fillwright/engine/golden/variables-plans.json'),
  variance_components: () => import('@fillwright/engine/golden/variance_components.json'),
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

import { complete } from '../check-of.mjs';

export function cases(given) {
  if (!given.inputs.test?.startsWith('EP 2.9.47')) return [];
  return complete(given, [
    {
      ...{ method: 'statistics.large-sample-counts', inputs: { sampleCount: given.inputs.n } },
      names: { outsideCount: 'c2', k_ratio: 'k', rowCount: 'table_row' },
    },
  ]);
}

import { checkedDesign } from '@fillwright/contract/design';
import { readBrief } from '@fillwright/contract/files';
import { search } from '@fillwright/engine/design';
import { SAME_BITS_RESULTS } from '../../../packages/stats/fixtures/same-bits-results.ts';

/** SHA-256 of each result of statistics as this engine computes it. */
export async function statisticsHashes(): Promise<Record<string, string>> {
  const entries = Object.entries(SAME_BITS_RESULTS).map(async ([name, result]) => {
    const bytes = new Uint8Array(result().buffer as ArrayBuffer);
    const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
    return [name, Array.from(hash, (byte) => byte.toString(16).padStart(2, '0')).join('')] as const;
  });
  return Object.fromEntries(await Promise.all(entries));
}

/** What `fillwright design <path> --seed <seed> --json` prints, from texts by path. */
export async function designJson(input: {
  path: string;
  seed: number;
  texts: Readonly<Record<string, string>>;
}): Promise<string> {
  const readText = (path: string): Promise<string> => {
    const text = input.texts[path];
    return text === undefined ? Promise.reject(new Error(`no text of ${path}`)) : Promise.resolve(text);
  };
  const read = await readBrief({ path: input.path, readText });
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { brief, filler, shells } = read;
  return JSON.stringify(checkedDesign(search({ brief, filler, shells, seed: input.seed })), null, 2);
}

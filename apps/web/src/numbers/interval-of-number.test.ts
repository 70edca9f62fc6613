import { readFileSync } from 'node:fs';
import { readBrief } from '@fillwright/contract/files';
import { candidateAt, placesOf } from '@fillwright/engine/design';
import { describe, expect, test } from 'vitest';
import { hasInterval, intervalOfNumber } from './interval-of-number.ts';
import type { NumberKey } from './number-reference.ts';
import { numberReferences } from './references/number-references.ts';
import { pageFacts } from './references/page-facts.ts';

const EXAMPLES = new URL('../../../../examples/', import.meta.url);
const STOP = { pin1Depth_mm: 3.5, pin2Depth_mm: 2.2, pin3Depth_mm: 1.3, pin4Depth_mm: 0.8, pin5Depth_mm: 0 };

async function alder() {
  const read = await readBrief({
    path: 'alder-200.brief.yaml',
    readText: (path) => Promise.resolve(readFileSync(new URL(path, EXAMPLES), 'utf8')),
  });
  if (!read.ok) throw new Error('the example cannot be read');
  const input = { brief: read.brief, filler: read.filler, shells: read.shells, seed: 1 };
  const [place] = placesOf(input).places;
  if (!place) throw new Error('no place');
  const candidate = candidateAt(input, place, { parts: { disc: 'D66-155', springs: 'S50' }, values: STOP });
  const facts = pageFacts(candidate, undefined, input);
  if (!facts) throw new Error('no facts');
  return { facts, references: numberReferences(candidate, undefined, input) };
}

describe('intervalOfNumber', () => {
  // Each of these numbers is monotone in every uncertain parameter, so its value at their means lies inside its central 90 %.
  test('property: an interval belongs to the number that is open: it holds the value at the means', async () => {
    const { facts, references } = await alder();
    const keys = (Object.keys(references) as NumberKey[]).filter((key) => hasInterval(key) && !key.startsWith('gain:'));
    expect(keys).toContain('density:1');
    for (const key of keys) {
      const interval = intervalOfNumber(key, facts);
      const value = references[key]?.value ?? NaN;
      expect(interval?.low90, key).toBeLessThanOrEqual(value);
      expect(interval?.high90, key).toBeGreaterThanOrEqual(value);
    }
  });
  test('limit: what is measured or given has none', async () => {
    const { facts } = await alder();
    for (const key of ['slug-dead', 'scale:1', 'target'] as const) {
      expect(hasInterval(key)).toBe(false);
      expect(intervalOfNumber(key, facts)).toBeUndefined();
    }
  });
});

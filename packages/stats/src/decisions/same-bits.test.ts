import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { SAME_BITS_RESULTS } from '../../fixtures/same-bits-results.ts';

const path = new URL('../../snapshots/same-bits.json', import.meta.url);
const snapshot = JSON.parse(readFileSync(path, 'utf8')) as { sha256: Record<string, string> };

describe('same bits on every engine', () => {
  test.each(Object.keys(SAME_BITS_RESULTS))('regression: the bytes of %s', (name) => {
    const values = SAME_BITS_RESULTS[name]!();
    expect(values.every(Number.isFinite)).toBe(true);
    expect(createHash('sha256').update(new Uint8Array(values.buffer)).digest('hex')).toBe(snapshot.sha256[name]);
  });
});

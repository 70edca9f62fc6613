import { describe, expect, test } from 'vitest';
import { versionHash } from './version-hash.ts';

const FIRST = {
  ...({ site: 'here', kind: 'brief', id: 'fw-d01', version: 1, status: 'draft', previous: null } as const),
  ...{ by: 'Äsa "K"', at: '2026-03-02T08:00:00.000Z', reason: null, text: 'a: 1\n\tb: "é€😀"\u001f\\ \u2028\u007f' },
};

describe('versionHash', () => {
  // Python 3.11: hashlib.sha256(json.dumps([...], separators=(",", ":"), ensure_ascii=False).encode()).hexdigest()
  test('golden: the first and a later version, from another language', () => {
    expect(versionHash(FIRST)).toBe('1f78e7cc98996282c4f5069320dd24320aac274f86b6cd6594e5c427ae8f04f9');
    const reason = 'assay of the new lot';
    expect(versionHash({ ...FIRST, version: 2, status: 'saved', previous: 'ab'.repeat(32), reason })).toBe(
      'beeab86aa790afb59116ced7b9997e233a259f43785121e9666d7fd3446e5cd5',
    );
  });
  test.each(Object.keys(FIRST))('property: %s is part of it', (key) => {
    const changed = { ...FIRST, [key]: key === 'version' ? 7 : `${String(FIRST[key as keyof typeof FIRST])}x` };
    expect(versionHash(changed)).not.toBe(versionHash(FIRST));
  });
});

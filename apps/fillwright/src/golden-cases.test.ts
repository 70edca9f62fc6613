import { parseCheckCases } from '@fillwright/contract/check-cases';
import { judgeCase } from '@fillwright/engine/catalogue';
import { findEntry } from '@fillwright/engine/register';
import { describe, expect, test } from 'vitest';
import { disputes, goldenCases } from './golden-cases.ts';

describe('goldenCases', () => {
  test('golden: all of them are of the form, with ids used once', () => {
    expect(parseCheckCases(goldenCases())).toMatchObject({ ok: true });
  });
  test.each(goldenCases())('golden: $id passes, or is disputed and does not', (one) => {
    expect(judgeCase(one, findEntry).verdict === 'pass').toBe(!disputes().has(one.id));
  });
});

describe('disputes', () => {
  test('golden: every dispute names a golden case, says why, and brings evidence', () => {
    const ids = goldenCases().map(({ id }) => id);
    for (const { id, why, evidence } of disputes().values()) {
      expect(ids).toContain(id);
      expect(why.trim() === '' || evidence.trim() === '').toBe(false);
    }
  });
});

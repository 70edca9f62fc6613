import { describe, expect, test } from 'vitest';
import { alikeRejections } from './alike-rejections.ts';

const tooTall = (size: string, flush_mg: number): Parameters<typeof alikeRejections>[0][number] => ({
  ...{ size, parts: { disc: `D-${flush_mg}` } },
  reason: { code: 'disc-too-tall', numbers: { flush_mg, target_mg: 300 }, rule: 'x' },
});

describe('alikeRejections', () => {
  test('golden: one line per size and kind, the nearest miss told, the others counted', () => {
    const groups = alikeRejections([tooTall('0', 340), tooTall('0', 321), tooTall('0', 360), tooTall('1', 330)]);
    expect(
      groups.map(({ nearest, moreCount }) => [nearest.size, nearest.reason.numbers['flush_mg'], moreCount]),
    ).toEqual([
      ['0', 321, 2],
      ['1', 330, 0],
    ]);
  });
  test('limit: nothing rejected, nothing told', () => {
    expect(alikeRejections([])).toEqual([]);
  });
});

import { describe, expect, test } from 'vitest';
import { cardOfShells } from './card-of-shells.ts';

const KNOWN = { target_mg: 430, limits: { meanAction_pct: 3, individualAction_pct: 7.5 } };

describe('cardOfShells', () => {
  // By hand: mean 97, sd sqrt(2 / 2) = 1, standard error 1 / sqrt(3); 430 +- 3 % and +- 7.5 %.
  test('golden: three shells of 96, 97, 98 mg', () => {
    const card = cardOfShells(KNOWN, [96, 97, 98]);
    expect(card?.tare).toMatchObject({ mean_mg: 97, sd_mg: 1, shellCount: 3 });
    expect(card?.tare.standardError_mg).toBeCloseTo(0.57735, 5);
    expect(card?.individualAction.grossLow_mg).toBeCloseTo(494.75, 9);
    expect(card?.meanAction.grossHigh_mg).toBeCloseTo(539.9, 9);
  });
  test.each([[[]], [[97]]])('refuses: shells %j make no tare', (shells_mg) => {
    expect(cardOfShells(KNOWN, shells_mg)).toBeUndefined();
  });
  test('refuses: a card without limits', () => {
    expect(cardOfShells({ target_mg: 430 }, [96, 97, 98])).toBeUndefined();
  });
});

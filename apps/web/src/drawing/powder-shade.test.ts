import { describe, expect, test } from 'vitest';
import { powderShade } from './powder-shade.ts';

const measured = (mean: number): { basis: 'measured'; mean: number; sd: number; n: number } => ({
  ...{ basis: 'measured', mean, sd: 0.01, n: 1 },
});
const powder = { bulkDensity_g_per_mL: measured(0.5), tappedDensity_g_per_mL: measured(0.64) };

// Expected by hand: loosest at 0.50, densest at 1.5 x 0.64 = 0.96 g/mL; 0.73 is half way.
describe('powderShade', () => {
  test.each([
    [0.5, '0%'],
    [0.73, '50%'],
    [0.96, '100%'],
    [0.3, '0%'],
    [2, '100%'],
  ])('golden: %s g/mL is %s of the dense shade', (density, share) => {
    expect(powderShade(powder, density)).toContain(`var(--powder-dense) ${share}`);
  });
  test('limit: without a density there is no powder', () => {
    expect(powderShade(powder, NaN)).toBe('var(--void)');
  });
});

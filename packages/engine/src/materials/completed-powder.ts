import type { Guess } from '#quantity';
import { compressibilityIndex_pct } from './compressibility-index.ts';
import type { Powder, PowderFacts } from './powder.ts';

/** Force of the pair of pressure and density that the default compression law stands on. @source common practice, no source */
const DEFAULT_PAIR_FORCE_N = 50;

/** Greatest volume reduction where one pair of pressure and density is all that is known. @source common practice, no source */
export const GUESSED_KAWAKITA_A: Guess = { basis: 'guess', mean: 0.55, sd: 0.1, halvedBy: 'slug-height' };

/**
 * A powder with the guesses of the trade for everything the floor does not measure. Each guess is wide and says which
 * single measurement would halve it.
 *
 * @param facts - what is known; poured and tapped density at least
 * @returns the powder, every property with its basis
 * @throws DomainError "tapped-below-bulk", "not-positive", "not-a-number"
 * @source common practice, no source: feed density 1.08 x poured +- 8 %; density at 50 N = tapped x 1.15 +- 12 % with
 *   a = 0.55 +- 0.1; refill 1 +- 0.15; springback 5 +- 2 % axial, 1 +- 0.5 % radial; friction 0.35 +- 0.08, lateral
 *   stress ratio 0.45 +- 0.05
 * @validity starting values before a trial, for blends of organic powders with a lubricant
 */
export function completedPowder(facts: PowderFacts): Powder {
  const bulk_g_per_mL = facts.bulkDensity_g_per_mL.mean;
  const tapped_g_per_mL = facts.tappedDensity_g_per_mL.mean;
  compressibilityIndex_pct({ bulkDensity_g_per_mL: bulk_g_per_mL, tappedDensity_g_per_mL: tapped_g_per_mL });
  return {
    feedDensity_g_per_mL: guess({ mean: 1.08 * bulk_g_per_mL, sd: 0.08 * 1.08 * bulk_g_per_mL }, 'feed-density'),
    compression: {
      law: 'one-pair-by-force',
      density_g_per_mL: guess({ mean: 1.15 * tapped_g_per_mL, sd: 0.12 * 1.15 * tapped_g_per_mL }, 'slug-height'),
      force_N: DEFAULT_PAIR_FORCE_N,
      a_frac: GUESSED_KAWAKITA_A,
    },
    refill_ratio: guess({ mean: 1, sd: 0.15 }, 'two-pin-depths'),
    axialSpringback_pct: guess({ mean: 5, sd: 2 }, 'slug-length'),
    radialSpringback_pct: guess({ mean: 1, sd: 0.5 }, 'slug-length'),
    wallFriction_ratio: guess({ mean: 0.35, sd: 0.08 }, 'wall-friction'),
    lateralStress_ratio: guess({ mean: 0.45, sd: 0.05 }, 'wall-friction'),
    ...facts,
  };
}

function guess(spread: { readonly mean: number; readonly sd: number }, halvedBy: string): Guess {
  return { basis: 'guess', ...spread, halvedBy };
}

import { exp, StatsError } from '#elementary';
import { scaledNormalTail } from './scaled-normal-tail.ts';

// W. J. Cody (1993), ACM algorithm 715, function ANORM: |z| <= 0.67449, ratio (Phi(z) - 1/2) / z as polynomials in z^2.
const NUMERATOR = [
  0.065682337918207449113, 2.2352520354606839287, 161.02823106855587881, 1067.6894854603709582, 18154.981253343561249,
];
const DENOMINATOR = [1, 47.20258190468824187, 976.09855173777669322, 10260.932208618978205, 45507.789335026729956];
const CENTRE = 0.67448975;

/**
 * Distribution function of the standard normal law, accurate in the lower tail.
 *
 * @param z - any number, the infinities included
 * @returns probability of a value up to z, 0 to 1
 * @throws StatsError "not-a-number"
 * @source W. J. Cody (1969, 1993), see SOURCES.md
 * @validity relative error below 1e-15 down to 1e-300; for the upper tail use `normalSurvival`
 */
export function normalCdf(z: number): number {
  if (Number.isNaN(z)) throw new StatsError('not-a-number', { z });
  const distance = Math.abs(z);
  if (distance <= CENTRE) return 0.5 + z * centreRatio(z * z);
  const tail = scaledNormalTail(distance) * halfSquareExponential(distance);
  return z < 0 ? tail : 1 - tail;
}

function centreRatio(square: number): number {
  let [numerator, denominator] = [0, 0];
  for (let i = 0; i < NUMERATOR.length; i++) {
    numerator = numerator * square + NUMERATOR[i]!;
    denominator = denominator * square + DENOMINATOR[i]!;
  }
  return numerator / denominator;
}

/** exp(-z^2/2) without the rounding of z^2: the square of z rounded to sixteenths is exact, the rest is small. */
function halfSquareExponential(z: number): number {
  if (z > 40) return 0;
  const coarse = Math.floor(z * 16) / 16;
  return exp(-0.5 * coarse * coarse) * exp(-0.5 * (z - coarse) * (z + coarse));
}

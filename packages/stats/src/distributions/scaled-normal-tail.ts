// W. J. Cody (1969), Math. Comp. 23, 631-637, and (1993), ACM algorithm 715, function ANORM: 0.67449 < z <= sqrt(32).
const NUMERATOR = [
  1.0765576773720192317e-8, 0.39894151208813466764, 8.8831497943883759412, 93.506656132177855979, 597.27027639480026226,
  2494.5375852903726711, 6848.1904505362823326, 11602.651437647350124, 9842.7148383839780218,
];
const DENOMINATOR = [
  1, 22.266688044328115691, 235.38790178262499861, 1519.377599407554805, 6485.558298266760755, 18615.571640885098091,
  34900.952721145977266, 38912.003286093271411, 19685.429676859990727,
];
const FRACTION_FROM = 5.656854249492381;
const FRACTION_TERMS = 20;
const ONE_BY_ROOT_TWO_PI = 0.3989422804014327;

/**
 * Upper normal tail divided by exp(-z^2/2).
 *
 * Beyond sqrt(32) Laplace's continued fraction; 20 terms are exact to 1e-16 there (checked with mpmath at 40 digits).
 *
 * @param z - at least 0.67449 (quartile of the normal law); the caller checks it
 * @returns P(Z > z) exp(z^2/2)
 * @throws nothing
 * @source W. J. Cody (1969, 1993); Abramowitz, Stegun (1964) 26.2.14
 * @validity relative error below 1e-15
 */
export function scaledNormalTail(z: number): number {
  if (z > FRACTION_FROM) {
    let fraction = z;
    for (let j = FRACTION_TERMS; j > 0; j--) fraction = z + j / fraction;
    return ONE_BY_ROOT_TWO_PI / fraction;
  }
  let [numerator, denominator] = [0, 0];
  for (let i = 0; i < NUMERATOR.length; i++) {
    numerator = numerator * z + NUMERATOR[i]!;
    denominator = denominator * z + DENOMINATOR[i]!;
  }
  return numerator / denominator;
}

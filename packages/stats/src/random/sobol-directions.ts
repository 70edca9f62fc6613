/**
 * Primitive polynomial (its coefficients as bits) and first direction numbers of each dimension.
 * S. Joe, F. Y. Kuo (2008), SIAM J. Sci. Comput. 30, 2635-2654, file new-joe-kuo-6.21201 (BSD licence), dimensions 1 to 24.
 */
export const SOBOL_DIRECTIONS: readonly { readonly polynomial: number; readonly first: readonly number[] }[] = [
  { polynomial: 1, first: [1] },
  { polynomial: 3, first: [1] },
  { polynomial: 7, first: [1, 3] },
  { polynomial: 11, first: [1, 3, 1] },
  { polynomial: 13, first: [1, 1, 1] },
  { polynomial: 19, first: [1, 1, 3, 3] },
  { polynomial: 25, first: [1, 3, 5, 13] },
  { polynomial: 37, first: [1, 1, 5, 5, 17] },
  { polynomial: 41, first: [1, 1, 5, 5, 5] },
  { polynomial: 47, first: [1, 1, 7, 11, 19] },
  { polynomial: 55, first: [1, 1, 5, 1, 1] },
  { polynomial: 59, first: [1, 1, 1, 3, 11] },
  { polynomial: 61, first: [1, 3, 5, 5, 31] },
  { polynomial: 67, first: [1, 3, 3, 9, 7, 49] },
  { polynomial: 91, first: [1, 1, 1, 15, 21, 21] },
  { polynomial: 97, first: [1, 3, 1, 13, 27, 49] },
  { polynomial: 103, first: [1, 1, 1, 15, 7, 5] },
  { polynomial: 109, first: [1, 3, 1, 15, 13, 25] },
  { polynomial: 115, first: [1, 1, 5, 5, 19, 61] },
  { polynomial: 131, first: [1, 3, 7, 11, 23, 15, 103] },
  { polynomial: 137, first: [1, 3, 7, 13, 13, 15, 69] },
  { polynomial: 143, first: [1, 1, 3, 13, 7, 35, 63] },
  { polynomial: 145, first: [1, 3, 5, 9, 1, 25, 53] },
  { polynomial: 157, first: [1, 3, 1, 13, 9, 35, 107] },
];

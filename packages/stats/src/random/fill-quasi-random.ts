import { requireWhole, StatsError } from '#elementary';
import { nextWord } from './next-word.ts';
import { seedStream } from './seed-stream.ts';
import { SOBOL_DIRECTIONS } from './sobol-directions.ts';

const BITS = 32;
const DIRECTIONS = SOBOL_DIRECTIONS.map(directionNumbers);

/** Which points of which sequence. */
export interface QuasiRandomSequence {
  readonly dimensions: number;
  readonly firstIndex?: number;
  readonly seed?: number;
}

/**
 * Fills an array with quasi-random points, evenly spread over the unit cube: coordinates of point 0, then of point 1, ...
 *
 * A Sobol sequence; every dimension is moved by a fixed random digital shift, which keeps the even spread and keeps all
 * coordinates off 0 and 1. Use a power of two of points from the start; the error of a mean is then far below that of
 * random points. Another seed gives another shift: a few of them show the error.
 *
 * @param target - length: a multiple of `dimensions`; every element is overwritten with a number above 0 and below 1
 * @param sequence - dimensions: 1 to 24; firstIndex: number of the first point, from 0, default 0; seed: default 1
 * @returns nothing
 * @throws StatsError "not-finite", "out-of-range", "not-whole" (a field), "wrong-length" (the array)
 * @source I. M. Sobol (1967); Gray code order: Antonov, Saleev (1979); directions: Joe, Kuo (2008); digital shift: Cranley,
 *   Patterson (1976) in base 2, see L'Ecuyer, Lemieux (2002), "Recent advances in randomized quasi-Monte Carlo methods"
 * @validity 2^31 points; 32 bits a coordinate
 */
export function fillQuasiRandom(target: Float64Array, sequence: QuasiRandomSequence): void {
  const { dimensions, firstIndex = 0, seed = 1 } = sequence;
  requireWhole({ dimensions }, { min: 1, max: DIRECTIONS.length });
  requireWhole({ firstIndex }, { min: 0, max: 2147483647 });
  if (target.length % dimensions !== 0) throw new StatsError('wrong-length', { length: target.length, dimensions });
  const stream = seedStream({ seed });
  for (let dimension = 0; dimension < dimensions; dimension++) {
    const shift = nextWord(stream);
    let index = firstIndex;
    for (let at = dimension; at < target.length; at += dimensions) {
      const word = sobolWord(DIRECTIONS[dimension]!, index++);
      target[at] = (((word ^ shift) >>> 0) + 0.5) / 4294967296;
    }
  }
}

/** The sum without carry of the direction numbers that the Gray code of the index names. */
function sobolWord(directions: Int32Array, index: number): number {
  let word = 0;
  for (let gray = index ^ (index >>> 1), bit = 0; gray !== 0; gray >>>= 1, bit++) {
    if (gray & 1) word ^= directions[bit]!;
  }
  return word;
}

/** Bratley, Fox (1988), algorithm 659: each number from the earlier ones by the coefficients of the polynomial. */
function directionNumbers({ polynomial, first }: (typeof SOBOL_DIRECTIONS)[number]): Int32Array {
  const degree = 31 - Math.clz32(polynomial);
  const directions = new Int32Array(BITS);
  for (let j = 0; j < BITS; j++) {
    if (j < first.length || degree === 0) {
      directions[j] = (first[j] ?? 1) << (BITS - 1 - j);
      continue;
    }
    let word = directions[j - degree]! ^ (directions[j - degree]! >>> degree);
    for (let k = 1; k < degree; k++) {
      if ((polynomial >>> (degree - k)) & 1) word ^= directions[j - k]!;
    }
    directions[j] = word;
  }
  return directions;
}

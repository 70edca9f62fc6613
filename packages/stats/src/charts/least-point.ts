/** An interval on which a function falls and then rises. */
export interface Valley {
  readonly from: number;
  readonly to: number;
  readonly tolerance: number;
}

const GOLDEN = 0.6180339887498949;

/**
 * Place of the least value of a function with one valley, by golden section.
 *
 * @param valley - the function
 * @param interval - ends and absolute tolerance of the place
 * @returns place of the least value; an end when the function only falls or only rises
 * @throws what the function throws
 * @source J. Kiefer, Proc. Amer. Math. Soc. 4 (1953) 502-506 (from memory)
 */
export function leastPoint(valley: (x: number) => number, { from, to, tolerance }: Valley): number {
  let [low, high] = [from, to];
  let inner = high - GOLDEN * (high - low);
  let outer = low + GOLDEN * (high - low);
  let [innerValue, outerValue] = [valley(inner), valley(outer)];
  while (high - low > tolerance) {
    if (innerValue < outerValue) {
      [high, outer, outerValue] = [outer, inner, innerValue];
      inner = high - GOLDEN * (high - low);
      innerValue = valley(inner);
    } else {
      [low, inner, innerValue] = [inner, outer, outerValue];
      outer = low + GOLDEN * (high - low);
      outerValue = valley(outer);
    }
  }
  return 0.5 * (low + high);
}

/** Where to look. */
export interface WholeRange {
  readonly from: number;
  readonly to: number;
}

/**
 * Smallest whole number for which a condition holds that, once it holds, holds for all larger ones: steps doubled until
 * it holds, then halved.
 *
 * @param holds - the condition
 * @param range - first and last number to try
 * @returns the number; undefined when the condition does not hold at the last one
 * @throws what the condition throws
 * @source none: bisection
 */
export function smallestWhole(holds: (n: number) => boolean, { from, to }: WholeRange): number | undefined {
  let below = from - 1;
  let above = from;
  for (let step = 1; !holds(above); step *= 2) {
    if (above === to) return undefined;
    below = above;
    above = Math.min(to, above + step);
  }
  while (above - below > 1) {
    const middle = Math.floor(0.5 * (below + above));
    if (holds(middle)) above = middle;
    else below = middle;
  }
  return above;
}

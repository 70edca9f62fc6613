/** Size of the picture of the heap, in its own units; names of limits stand above `top`. */
export const HEAP = { width: 560, height: 96, columns: 62, top: 24 } as const;

/** Radius of a dot: columns touch. */
export const DOT = HEAP.width / HEAP.columns;

/**
 * Capsules as dots that lie on each other, as one path of points drawn with round ends, around the middle of the heap:
 * a lever moves it as a whole.
 *
 * @param places - of the capsules from the middle, as shares of the axis
 * @returns `d` of a path
 */
export function heapPath(places: readonly number[]): string {
  const counts = new Map<number, number>();
  const dots = places.filter(Number.isFinite).map((place) => {
    const column = Math.floor(place * HEAP.columns);
    const count = counts.get(column) ?? 0;
    counts.set(column, count + 1);
    return { column, count };
  });
  const tallest = Math.max(1, ...counts.values());
  const rise = Math.min(DOT, (HEAP.height - HEAP.top - DOT) / tallest);
  return dots
    .map(({ column, count }) => {
      const x = (column + 0.5) * DOT;
      const y = HEAP.height - DOT / 2 - count * rise;
      return `M${x.toFixed(1)} ${y.toFixed(1)}h0`;
    })
    .join('');
}

const REACH_sd = 3.2;
const STEP_sd = 0.2;

/**
 * Outline of a heap around its middle: a bell of the same spread.
 *
 * @param bell - standard deviation as a share of the axis; height in the picture's units
 * @returns `d` of a path
 */
export function bellPath(bell: { readonly sd: number; readonly height: number }): string {
  const count = Math.round((2 * REACH_sd) / STEP_sd);
  const points = Array.from({ length: count + 1 }, (_, i) => {
    const z = -REACH_sd + i * STEP_sd;
    const x = z * bell.sd * HEAP.width;
    const y = HEAP.height - bell.height * Math.exp((-z * z) / 2);
    return `${x.toFixed(1)} ${y.toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

import { exp, log } from '#elementary';
import { expMinusOne } from './exp-minus-one.ts';
import { poissonTerm } from './poisson-term.ts';

/** A function of the ratio s of an estimated to the true standard deviation, from so many degrees of freedom. */
interface ScaleMean {
  readonly degreesOfFreedom: number;
  readonly of: (scale: number) => number;
}

const FEWEST_STEPS = 32;
const MOST_STEPS = 131072;
/** What falls below this share of the greatest term is left away. */
const NEGLIGIBLE = 1e-20;
/** Two rules agree to this: the finer one is then exact to rounding, since the error of such a rule falls like its square. */
const AGREE = 1e-9;
/** Natural logarithm of the density, against its peak, beyond which nothing is left. */
const DEEPEST = -740;

/**
 * Mean of f(S), S = sqrt(chi-square / degrees of freedom): what an estimated standard deviation does to a probability.
 *
 * Trapezoidal rule in x, s = exp(x - exp(-x)): with f smooth everything falls off doubly exponentially. A coarse look finds
 * where the integrand has its one hill, then the step is halved until two rules agree.
 *
 * @param mean - degreesOfFreedom from 1; of: not negative, of one hill times the density; the caller checks them
 * @returns the mean
 * @throws nothing
 * @source H. Takahasi, M. Mori (1974), Publ. RIMS 9, 721-741
 * @validity relative error below 1e-10, small means included
 */
export function chiAverage({ degreesOfFreedom, of }: ScaleMean): number {
  const integrand = (x: number): number => {
    const shrink = exp(-x);
    const logScale = x - shrink;
    const weight = exp(logDensity(logScale, degreesOfFreedom)) * (1 + shrink);
    return weight === 0 ? 0 : weight * of(exp(logScale));
  };
  const integral = trapezoid(integrand, hill(integrand, rangeOf(degreesOfFreedom)));
  const shape = 0.5 * degreesOfFreedom;
  return integral * degreesOfFreedom * poissonTerm(shape, shape);
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/** The part of the span that counts, to within a coarse step. */
function hill(integrand: (x: number) => number, { from, to }: Span): Span {
  const width = (to - from) / FEWEST_STEPS;
  const values = Array.from({ length: FEWEST_STEPS + 1 }, (_, i) => integrand(from + i * width));
  const least = Math.max(...values) * NEGLIGIBLE;
  const first = values.findIndex((value) => value > least);
  if (first < 0) return { from, to };
  const last = values.findLastIndex((value) => value > least);
  return { from: from + Math.max(0, first - 1) * width, to: from + Math.min(FEWEST_STEPS, last + 1) * width };
}

function trapezoid(integrand: (x: number) => number, { from, to }: Span): number {
  let steps = FEWEST_STEPS;
  let width = (to - from) / steps;
  let sum = 0.5 * (integrand(from) + integrand(to));
  for (let i = 1; i < steps; i++) sum += integrand(from + i * width);
  let before = NaN;
  while (!(Math.abs(sum * width - before) <= AGREE * sum * width) && steps < MOST_STEPS) {
    before = sum * width;
    for (let i = 0; i < steps; i++) sum += integrand(from + (i + 0.5) * width);
    steps *= 2;
    width /= 2;
  }
  return sum * width;
}

function logDensity(logScale: number, degreesOfFreedom: number): number {
  return degreesOfFreedom * (logScale - 0.5 * expMinusOne(2 * logScale));
}

/** Range of x in which the density is not 0. */
function rangeOf(degreesOfFreedom: number): Span {
  const edge = (outside: number): number => {
    let [far, near] = [outside, 0];
    for (let i = 0; i < 30; i++) {
      const middle = 0.5 * (far + near);
      if (logDensity(middle, degreesOfFreedom) < DEEPEST) far = middle;
      else near = middle;
    }
    return positionOf(far);
  };
  return { from: edge(DEEPEST / degreesOfFreedom - 1), to: edge(5) };
}

/** x with x - exp(-x) = logScale, by Newton's method. */
function positionOf(logScale: number): number {
  let x = logScale > 0 ? logScale : -log(1 - logScale);
  for (let i = 0; i < 8; i++) {
    const shrink = exp(-x);
    x -= (x - shrink - logScale) / (1 + shrink);
  }
  return x;
}

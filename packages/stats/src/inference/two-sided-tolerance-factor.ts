import { chiSquareSurvival, normalQuantile, normalSurvival } from '#distributions';
import { exp, log } from '#elementary';
import { bracketedRoot } from '#numerics';
import { howeToleranceFactor } from './howe-tolerance-factor.ts';
import type { ToleranceInput } from './tolerance-law.ts';
import { toleranceLaw } from './tolerance-law.ts';

const FARTHEST = 9;
const ONE_BY_ROOT_TWO_PI = 0.3989422804014327;
/** Two rules agree to this share of k: the finer one is then better by far. */
const AGREE = 1e-8;

/**
 * Exact factor k of a two-sided tolerance interval of a normal law, mean - k sd to mean + k sd.
 *
 * k solves E P(chi2 > nu r(Z / sqrt n)^2 / k^2) = confidence over a standard normal Z, where Phi(x + r) - Phi(x - r) = content.
 * The trapezoidal rule is nearly exact for such functions; its step is halved until k stays.
 *
 * @param input - n: whole, 2 to 1e7; content, confidence: above 0 and below 1; degreesOfFreedom of a pooled sd: 1 to 1e7
 * @returns k
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source ISO 16269-6:2014, annex (secondary); K. Krishnamoorthy, T. Mathew (2009), Statistical Tolerance Regions, 2.3 (from memory)
 * @validity relative error below 1e-8; normal values
 */
export function twoSidedToleranceFactor(input: ToleranceInput): number {
  const law = toleranceLaw(input);
  let factor = howeToleranceFactor(law);
  for (let step = 0.5; step > 0.001; step /= 2) {
    const next = factorAt(step, { law, guess: factor });
    if (Math.abs(next - factor) <= AGREE * factor) return next;
    factor = next;
  }
  return factor;
}

interface Start {
  readonly law: Required<ToleranceInput>;
  readonly guess: number;
}

function factorAt(step: number, { law, guess }: Start): number {
  const { n, content, confidence, degreesOfFreedom } = law;
  const count = Math.ceil(FARTHEST / step);
  const weights = Float64Array.from({ length: count }, (_, i) => weightOf(i, step));
  const reaches = reachesOf(count, { spacing: step / Math.sqrt(n), content });
  const target = normalQuantile(confidence);
  const excess = (logFactor: number): number => {
    const scale = degreesOfFreedom * exp(-2 * logFactor);
    let sum = 0;
    for (let i = 0; i < count; i++) {
      const reach = reaches[i]!;
      sum += weights[i]! * chiSquareSurvival({ x: scale * reach * reach, degreesOfFreedom });
    }
    return normalQuantile(Math.max(1e-300, Math.min(1 - 1e-16, sum))) - target;
  };
  let [from, to, widening] = [log(guess), log(guess), 0.002];
  while (excess(from) > 0) from -= widening *= 4;
  while (excess(to) < 0) to += widening *= 4;
  return exp(bracketedRoot(excess, { from, to, tolerance: 1e-12 }));
}

function weightOf(i: number, step: number): number {
  const z = i * step;
  return (i === 0 ? 1 : 2) * step * ONE_BY_ROOT_TWO_PI * exp(-0.5 * z * z);
}

/** r at distances 0, spacing, 2 spacing, ... of the mean: from the one before, too small, Newton's method only rises. */
function reachesOf(count: number, { spacing, content }: { spacing: number; content: number }): Float64Array {
  const outside = 1 - content;
  let reach = -normalQuantile(0.5 * outside);
  return Float64Array.from({ length: count }, (_, i) => {
    const x = i * spacing;
    for (let turn = 0; turn < 50; turn++) {
      const left = normalSurvival(reach + x) + normalSurvival(reach - x) - outside;
      const slope =
        ONE_BY_ROOT_TWO_PI * (exp(-0.5 * (reach + x) * (reach + x)) + exp(-0.5 * (reach - x) * (reach - x)));
      const move = left / slope;
      reach += move;
      if (Math.abs(move) < 1e-13 * reach) break;
    }
    return reach;
  });
}

import { exp, log, requireWithin, StatsError } from '#elementary';
import { studentQuantile } from '#distributions';
import { effectWord } from './effect-word.ts';
import { sortedWords } from './sorted-words.ts';

interface Effect {
  /** Letters of the factors. */
  readonly name: string;
  /** Mean at the high level less mean at the low level. */
  readonly effect: number;
  /** One response per run. */
  readonly sumOfSquares: number;
  /** Beyond the margin of error of one effect looked at alone. */
  readonly isBeyondMargin: boolean;
  /** Beyond the margin that all effects together stay within. */
  readonly isBeyondSimultaneousMargin: boolean;
}

export interface TwoLevelEffects {
  readonly mean: number;
  /** By length of the name, then by the alphabet. */
  readonly effects: readonly Effect[];
  /** Lenth's pseudo standard error of an effect. */
  readonly pseudoStandardError: number;
  readonly marginOfError: number;
  readonly simultaneousMargin: number;
}

/**
 * Effects of a full two-level factorial without replicates, and which of them stand out (Lenth).
 *
 * PSE = 1.5 median{|c| : |c| < 2.5 s0}, s0 = 1.5 median |c|; m/3 degrees of freedom for m effects
 *
 * @param task - responses: 4, 8, ... 4096 of them in standard order (first factor fastest); confidence, default 0.95
 * @returns mean, effects with sums of squares, Lenth's margins
 * @throws StatsError "sample-size" (not a power of 2), "not-finite", "out-of-range" (confidence)
 * @source R. V. Lenth (1989), Technometrics 31, 469-473 (from memory); Yates' order
 * @validity most effects idle; with half of them at work the margins are too wide
 */
export function twoLevelEffects(task: {
  readonly responses: readonly number[];
  readonly confidence?: number;
}): TwoLevelEffects {
  const { responses, confidence = 0.95 } = task;
  requireWithin({ confidence }, { above: 0, below: 1 });
  const runCount = responses.length;
  if (runCount < 4 || runCount > 4096 || (runCount & (runCount - 1)) !== 0)
    throw new StatsError('sample-size', { runCount });
  for (const [run, response] of responses.entries()) requireWithin({ [`responses.${run}`]: response });
  const contrasts = contrastsOf(responses);
  const sizes = new Map(contrasts.map((sum, bits) => [effectWord(bits), (2 * sum) / runCount]));
  const names = sortedWords([...sizes.keys()].filter((name) => name !== 'I'));
  const margins = lenthMargins({ effects: names.map((name) => sizes.get(name)!), confidence });
  const effects = names.map((name) => {
    const effect = sizes.get(name)!;
    return {
      ...{ name, effect, sumOfSquares: (effect * effect * runCount) / 4 },
      isBeyondMargin: Math.abs(effect) > margins.marginOfError,
      isBeyondSimultaneousMargin: Math.abs(effect) > margins.simultaneousMargin,
    };
  });
  return { mean: contrasts[0]! / runCount, effects, ...margins };
}

/** Sums with the signs of every effect, by the bits of its factors (Yates). */
function contrastsOf(responses: readonly number[]): readonly number[] {
  const sums = [...responses];
  for (let step = 1; step < sums.length; step *= 2)
    for (let i = 0; i < sums.length; i++) {
      if ((i & step) !== 0) continue;
      const [low, high] = [sums[i]!, sums[i + step]!];
      sums[i] = low + high;
      sums[i + step] = high - low;
    }
  return sums;
}

function lenthMargins({ effects, confidence }: { effects: readonly number[]; confidence: number }) {
  const sizes = effects.map(Math.abs);
  const start = 1.5 * median(sizes);
  const pseudoStandardError = start === 0 ? 0 : 1.5 * median(sizes.filter((size) => size < 2.5 * start));
  const degreesOfFreedom = effects.length / 3;
  const factor = (p: number): number => studentQuantile({ p: 0.5 * (1 - p), degreesOfFreedom, tail: 'upper' });
  const each = exp(log(confidence) / effects.length);
  return {
    pseudoStandardError,
    marginOfError: factor(confidence) * pseudoStandardError,
    simultaneousMargin: factor(each) * pseudoStandardError,
  };
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : 0.5 * (sorted[half - 1]! + sorted[half]!);
}

import { requireWhole, StatsError } from '#elementary';
import type { Matrix } from '#numerics';
import { effectBits } from './effect-bits.ts';
import { effectWord } from './effect-word.ts';
import { fullFactorial } from './full-factorial.ts';
import { sortedWords } from './sorted-words.ts';

export interface FractionTask {
  readonly factorCount: number;
  /** One per added factor, in the order of the factors: `D=ABC`, `E=-AB`. */
  readonly generators: readonly string[];
}

interface Alias {
  /** A main effect or an interaction of two factors. */
  readonly effect: string;
  /** Effects of up to three factors that cannot be told from it; a minus sign stands before those of opposite sign. */
  readonly aliases: readonly string[];
}

export interface FractionalFactorial {
  readonly rows: Matrix;
  /** Words equal to the identity, with their sign. */
  readonly definingRelation: readonly string[];
  /** Length of the shortest word; absent for a full factorial. */
  readonly resolution?: number;
  readonly aliases: readonly Alias[];
}

interface Word {
  readonly bits: number;
  readonly sign: number;
}

const LONGEST_ALIAS = 3;

/**
 * Two-level fraction by generators: the first factors are a full factorial in standard order, each further one is a
 * product of their columns.
 *
 * @param task - factorCount: 2 to 15; generators: one for each of the last factors, made of the base factors only
 * @returns rows, defining relation, resolution, and which effects of up to two factors are aliased with what
 * @throws StatsError "not-finite", "not-whole", "out-of-range" (factorCount; generatorIndex: a generator that is not of
 *   the form, names another factor than its own, or uses an added factor)
 * @source D. C. Montgomery, Design and Analysis of Experiments, chapter 8 (from memory)
 */
export function fractionalFactorial({ factorCount, generators }: FractionTask): FractionalFactorial {
  requireWhole({ factorCount }, { min: 2, max: 15 });
  const baseCount = factorCount - generators.length;
  requireWhole({ baseCount }, { min: 1, max: 12 });
  const words = generators.map((text, i) => generatorWord({ text, index: i, baseCount }));
  const rows = fullFactorial({ factorCount: baseCount }).map((row) => [
    ...row,
    ...words.map(({ bits, sign }) => sign * productOf(row, bits)),
  ]);
  const relation = relationOf(words.map(({ bits, sign }, i) => ({ bits: bits | (1 << (baseCount + i)), sign })));
  const lengths = relation.map(({ bits }) => effectWord(bits).length);
  return {
    rows,
    definingRelation: named(relation),
    ...(relation.length > 0 && { resolution: Math.min(...lengths) }),
    aliases: aliasesOf(relation, factorCount),
  };
}

function generatorWord({ text, index, baseCount }: { text: string; index: number; baseCount: number }): Word {
  const [, factor = '', minus = '', product = ''] = /^\s*([A-Z])\s*=\s*(-?)\s*([A-Z]+)\s*$/.exec(text) ?? [];
  const bits = effectBits(product);
  const isBase = bits !== undefined && bits !== 0 && bits < 1 << baseCount;
  if (!isBase || effectBits(factor) !== 1 << (baseCount + index))
    throw new StatsError('out-of-range', { generatorIndex: index, baseCount });
  return { bits, sign: minus === '' ? 1 : -1 };
}

function productOf(row: readonly number[], bits: number): number {
  return row.reduce((product, level, k) => ((bits >> k) & 1 ? product * level : product), 1);
}

/** All products of the generating words but the empty one. */
function relationOf(words: readonly Word[]): Word[] {
  let all: Word[] = [{ bits: 0, sign: 1 }];
  for (const word of words)
    all = all.flatMap((one) => [one, { bits: one.bits ^ word.bits, sign: one.sign * word.sign }]);
  return all.slice(1);
}

function named(words: readonly Word[]): string[] {
  const signs = new Map(words.map(({ bits, sign }) => [effectWord(bits), sign < 0 ? '-' : '']));
  return sortedWords([...signs.keys()]).map((name) => `${signs.get(name) ?? ''}${name}`);
}

function aliasesOf(relation: readonly Word[], factorCount: number): Alias[] {
  const single = Array.from({ length: factorCount }, (_, k) => 1 << k);
  const pairs = single.flatMap((one, i) => single.slice(i + 1).map((other) => one | other));
  return [...single, ...pairs].map((effect) => {
    const all = relation.map(({ bits, sign }) => ({ bits: bits ^ effect, sign }));
    return {
      effect: effectWord(effect),
      aliases: named(all.filter(({ bits }) => bits !== 0 && effectWord(bits).length <= LONGEST_ALIAS)),
    };
  });
}

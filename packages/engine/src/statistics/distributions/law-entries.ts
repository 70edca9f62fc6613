import type { Entry, Field, NumberField, Source, ValuesOf } from '#catalogue';
import { fromStats } from '../from-stats.ts';

/** A probability counted from one side. */
interface Asked {
  /** Pure number. */
  readonly p_ratio: number;
  readonly tail: 'lower' | 'upper';
}

/** A law as two entries: probabilities at a point, and the quantile. */
export interface Law<I extends readonly Field[]> {
  /** Name in ids, in kebab case. */
  readonly id: string;
  readonly title: string;
  /** Letter of the variable and of the law's probability, as in P(X <= x). */
  readonly letters: readonly [string, string];
  /** What the variable is, in LaTeX. */
  readonly equation: string;
  readonly variable: NumberField;
  readonly parameters: I;
  readonly sources: readonly Source[];
  readonly validity: string;
  readonly lower_frac: (values: ValuesOf<I>, variable_ratio: number) => number;
  readonly upper_frac: (values: ValuesOf<I>, variable_ratio: number) => number;
  /** Laws on whole numbers only: probability of exactly this value. */
  readonly exactly_frac?: (values: ValuesOf<I>, variable_ratio: number) => number;
  readonly quantile_ratio: (values: ValuesOf<I>, asked: Asked) => number;
}

const SHARE = { kind: 'number', unit: '1' } as const;
const TAIL = {
  key: 'tail',
  title: 'side from which p is counted: lower (unless given) is P(X <= x), upper is P(X > x)',
  kind: 'choice',
  choices: ['lower', 'upper'],
  optional: true,
} as const;
const P = { key: 'p_frac', title: 'probability p', ...SHARE, above: 0, below: 1 } as const;
const REST = 'the law itself: numerical error only, see validity';

/**
 * The two entries of a law.
 *
 * @param law - names, fields and functions
 * @returns entry of the probabilities, entry of the quantile
 * @throws nothing
 * @source none: bookkeeping
 */
export function lawEntries<const I extends readonly Field[]>(law: Law<I>): readonly Entry[] {
  const { id, title, letters, equation, variable, parameters, sources, validity } = law;
  const [capital, small] = letters;
  const isDiscrete = law.exactly_frac !== undefined;
  const probabilities: Entry = {
    id: `statistics.${id}-probability`,
    title: `Probabilities of the ${title}`,
    equation: `P(${capital} \\le ${small}),\\quad P(${capital} > ${small}),\\quad ${equation}`,
    inputs: [variable, ...parameters],
    outputs: [
      ...(isDiscrete ? [{ key: 'exactly_frac', title: 'probability of exactly this value', ...SHARE }] : []),
      { key: 'lower_frac', title: 'probability of a value up to it', ...SHARE },
      { key: 'upper_frac', title: 'probability of a value above it, accurate when small', ...SHARE },
    ],
    ...{ sources, validity, restsOn: REST },
    compute: (values: ValuesOf<I> & Readonly<Record<string, number>>) => {
      const point = values[variable.key]!;
      return fromStats(() => ({
        ...(law.exactly_frac ? { exactly_frac: law.exactly_frac(values, point) } : {}),
        lower_frac: law.lower_frac(values, point),
        upper_frac: law.upper_frac(values, point),
      }));
    },
  };
  const quantile: Entry = {
    id: `statistics.${id}-quantile`,
    title: `Quantile of the ${title}`,
    equation: isDiscrete
      ? `\\operatorname{least}\\,${small}:\\,P(${capital} \\le ${small}) \\ge p,\\quad ${equation}`
      : `P(${capital} \\le ${small}) = p,\\quad ${equation}`,
    inputs: [P, TAIL, ...parameters],
    outputs: [{ key: variable.key, title: 'quantile', kind: variable.kind, unit: variable.unit }],
    ...{ sources, validity, restsOn: REST },
    compute: (values: ValuesOf<I> & { readonly p_frac: number; readonly tail?: 'lower' | 'upper' }) => ({
      [variable.key]: fromStats(() =>
        law.quantile_ratio(values, { p_ratio: values.p_frac, tail: values.tail ?? 'lower' }),
      ),
    }),
  };
  return [probabilities, quantile];
}

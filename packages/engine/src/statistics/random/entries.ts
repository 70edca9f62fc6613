import { fillNormals, nextUniform, nextWord, seedStream, type Stream } from '@fillwright/stats/random';
import { defineEntry, DomainError, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';

const WORD = { kind: 'integer', unit: '1', min: 0, max: 4_294_967_295 } as const;
const MANY = { min: 1, max: 1000 } as const;

/** Catalogue entries of this area. */
export const randomEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.random-numbers',
    title: 'First random numbers of a stream',
    equation:
      'w = \\operatorname{rotl}(s_0+s_3,7)+s_0,\\quad u = \\frac{2^{26}\\lfloor w_1/2^6\\rfloor+\\lfloor w_2/2^6\\rfloor+1/2}{2^{52}}',
    inputs: [
      { key: 'seed', title: 'seed', ...WORD, optional: true },
      { key: 'chunk', title: 'part of the job; 0 unless given', ...WORD, optional: true },
      {
        key: 'states',
        title: 'the four words of a state, instead of a seed',
        ...WORD,
        list: { min: 4, max: 4 },
        optional: true,
      },
      { key: 'numberCount', title: 'how many', kind: 'integer', unit: '1', min: 1, max: 1000 },
    ],
    outputs: [
      { key: 'words', title: 'words of 32 bits', ...WORD, list: MANY },
      {
        key: 'uniforms_ratio',
        title: 'numbers between 0 and 1 from the same start',
        kind: 'number',
        unit: '1',
        list: MANY,
      },
      {
        key: 'normals_ratio',
        title: 'standard normal numbers from the same start',
        kind: 'number',
        unit: '1',
        list: MANY,
      },
    ],
    sources: [
      { text: 'D. Blackman, S. Vigna (2021), ACM Trans. Math. Softw. 47, 36: xoshiro128++', read: 'from memory' },
      { text: 'G. Marsaglia, W. W. Tsang (2000), J. Stat. Softw. 5(8): ziggurat', read: 'from memory' },
    ],
    validity:
      'For simulation, not for secrets. A job is cut into a fixed number of parts, each with its own stream, so that its result does not depend on the number of workers.',
    restsOn: 'streams of different parts start far apart by chance: 2^128 states, a part takes far fewer than 2^40',
    compute: ({ seed, chunk = 0, states, numberCount }) =>
      fromStats(() => {
        const stream = (): Stream => started({ seed, chunk, states });
        const [ofWords, ofUniforms] = [stream(), stream()];
        const normals = new Float64Array(numberCount);
        fillNormals(stream(), normals);
        return {
          words: Array.from({ length: numberCount }, () => nextWord(ofWords)),
          uniforms_ratio: Array.from({ length: numberCount }, () => nextUniform(ofUniforms)),
          normals_ratio: [...normals],
        };
      }),
  }),
];

interface Start {
  readonly seed: number | undefined;
  readonly chunk: number;
  readonly states: readonly number[] | undefined;
}

function started({ seed, chunk, states }: Start): Stream {
  if ((seed === undefined) === (states === undefined))
    throw new DomainError('out-of-range', {
      reason: 'seed-or-states',
      count: seed === undefined ? 0 : 2,
      min: 1,
      max: 1,
    });
  if (states === undefined) return seedStream({ seed: seed ?? 0, chunk });
  if (states.every((word) => word === 0)) throw new DomainError('out-of-range', { field: 'states', sum: 0, above: 0 });
  return { state: Int32Array.from(states) };
}

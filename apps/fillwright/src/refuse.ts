import type { Streams } from './streams.ts';

/**
 * Says what is wrong with the input.
 *
 * @param streams - where to write
 * @param sentences - one for each problem
 * @returns the exit code for wrong input
 */
export function refuse(streams: Streams, ...sentences: readonly string[]): number {
  streams.problem(sentences.join('\n'));
  return 2;
}

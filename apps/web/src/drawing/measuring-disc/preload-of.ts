import type { SpringPart } from '@fillwright/engine/fillers';

/** Preload of a spring set that nobody measured. @source common practice, no source; as in the engine's model of the disc */
const GUESSED_PRELOAD_N = 50;

/** @returns the force at which the springs begin to yield, N: measured, else the trade's guess */
export function springOf_N(springs: SpringPart | undefined): number {
  return springs?.preload_N?.mean ?? GUESSED_PRELOAD_N;
}

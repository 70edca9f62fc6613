import type { WorkbenchState } from './workbench-state.ts';

/** @returns whether something would be gone with the page: the server has not got it, and this browser keeps nothing */
export function wouldBeLost({ save, choiceSave, isKeptHere }: WorkbenchState): boolean {
  return !isKeptHere && (save.kind !== 'kept' || choiceSave.kind !== 'kept');
}

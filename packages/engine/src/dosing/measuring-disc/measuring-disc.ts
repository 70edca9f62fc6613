import type { DosingMethod } from '../dosing.ts';
import { accepts } from './accepts.ts';
import { adjusters } from './adjusters.ts';
import { evaluator } from './evaluator.ts';
import { parameters } from './parameters.ts';
import { predict } from './predict.ts';
import { sheet } from './sheet.ts';
import { solve } from './solve.ts';
import { withPart } from './with-part.ts';

/** Slugs from a measuring disc, tamped station by station by pins on springs. */
export const measuringDisc: DosingMethod = {
  ...{ id: 'measuring-disc', accepts, adjusters, parameters },
  ...{ evaluator, predict, solve, withPart, sheet },
};

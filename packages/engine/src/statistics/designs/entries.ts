import type { Entry } from '#catalogue';
import { constructions } from './constructions.ts';
import { fits } from './fits.ts';
import { nonlinear } from './nonlinear.ts';
import { runPlan } from './run-plan.ts';

/** Catalogue entries of designs of experiments and of the fits that belong to them. */
export const designEntries: readonly Entry[] = [...constructions, ...runPlan, ...fits, ...nonlinear];

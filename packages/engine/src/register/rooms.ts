import { entries as brief } from '#brief';
import type { Entry } from '#catalogue';
import { entries as design } from '#design';
import { entries as dosing } from '#dosing';
import { entries as fillers } from '#fillers';
import { entries as materials } from '#materials';
import { entries as quantity } from '#quantity';
import { entries as shells } from '#shells';
import { entries as statistics } from '#statistics';
import { entries as weights } from '#weights';

/** Every room with catalogue entries, in the order a product travels: an import and a line for each. */
export const ROOMS: Readonly<Record<string, readonly Entry[]>> = {
  quantity,
  statistics,
  brief,
  materials,
  shells,
  fillers,
  dosing,
  design,
  weights,
};

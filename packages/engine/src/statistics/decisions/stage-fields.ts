import type { StageArithmetic } from '@fillwright/stats/decisions';
import type { Field, ValuesOf } from '#catalogue';

/** The arithmetic of one stage of the uniformity of dosage units. */
export const STAGE_FIELDS = [
  { key: 'unitCount', title: 'units', kind: 'integer', unit: '1' },
  { key: 'mean_pct', title: 'mean content', kind: 'number', unit: '%' },
  { key: 'sd_pct', title: 'standard deviation s', kind: 'number', unit: '%' },
  { key: 'reference_pct', title: 'reference value M', kind: 'number', unit: '%' },
  {
    key: 'referenceCase',
    title: 'mean against the reference zone',
    kind: 'choice',
    choices: ['below', 'inside', 'above'],
  },
  { key: 'factor_ratio', title: 'acceptability constant k', kind: 'number', unit: '1' },
  { key: 'acceptanceValue_pct', title: 'acceptance value, not rounded', kind: 'number', unit: '%' },
  { key: 'roundedAcceptanceValue_pct', title: 'acceptance value, rounded half-up', kind: 'number', unit: '%' },
  { key: 'isMetUnrounded', title: 'stage met, unrounded value against L1', kind: 'flag' },
  { key: 'isMetRounded', title: 'stage met, rounded value against L1', kind: 'flag' },
  { key: 'lowestUnit_pct', title: 'lowest content of a unit at stage 2', kind: 'number', unit: '%' },
  { key: 'highestUnit_pct', title: 'highest content of a unit at stage 2', kind: 'number', unit: '%' },
  { key: 'belowCount', title: 'units below', kind: 'integer', unit: '1' },
  { key: 'aboveCount', title: 'units above', kind: 'integer', unit: '1' },
  { key: 'outsideUnits', title: 'which units lie outside', kind: 'integer', unit: '1', list: { min: 0, max: 30 } },
] as const satisfies readonly Field[];

/**
 * The arithmetic of a stage under the keys of the catalogue.
 *
 * @param stage - as package stats gives it
 * @returns values of `STAGE_FIELDS`
 * @throws nothing
 * @source none: bookkeeping
 */
export function stageValues(stage: StageArithmetic): ValuesOf<typeof STAGE_FIELDS> {
  const sides = stage.outside.map(({ side }) => side);
  // The text judges single units at stage 2 only.
  const isClear = stage.n === 10 || stage.outside.length === 0;
  return {
    ...{ unitCount: stage.n, mean_pct: stage.mean, sd_pct: stage.sd, reference_pct: stage.reference },
    ...{ referenceCase: stage.referenceCase, factor_ratio: stage.factor },
    acceptanceValue_pct: stage.acceptanceValue,
    roundedAcceptanceValue_pct: stage.roundedAcceptanceValue,
    isMetUnrounded: stage.isWithinLimit.unrounded && isClear,
    isMetRounded: stage.isWithinLimit.halfUp && isClear,
    ...{ lowestUnit_pct: stage.lowestUnit, highestUnit_pct: stage.highestUnit },
    belowCount: sides.filter((side) => side === 'below').length,
    aboveCount: sides.filter((side) => side === 'above').length,
    outsideUnits: stage.outside.map(({ unit }) => unit),
  };
}

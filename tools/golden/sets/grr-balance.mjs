import { complete } from '../check-of.mjs';

export function cases(given) {
  if (given.inputs.kind === 'crossed gauge R&R') return gauge(given);
  if (given.inputs.kind === 'balance minimum weight') return balance(given);
  return [];
}

function balance(given) {
  const { weighings_mg, d_mg, smallest_net_mg } = given.inputs;
  const names = {
    ...{ sd_data: 's', floor_data: 'floor', sdUsed_data: 's_used', isFloorUsed: 'floor_applies' },
    ...{ minimumWeight_data: 'minimum_weight_mg', repeatability_pct: 'repeatability_pct_at_want' },
    isRepeatabilityMet: 'repeatability_ok',
  };
  const inputs = { weighings_data: weighings_mg, readability_data: d_mg, smallestNet_data: smallest_net_mg };
  return complete(given, [{ method: 'statistics.balance-minimum-weight', inputs, names }]);
}

const LINES = { ss: 'sumOfSquares_data2', df: 'degreesOfFreedom_ratio', ms: 'meanSquare_data2' };
const SOURCES = {
  part: 'partLine',
  appraiser: 'appraiserLine',
  interaction: 'interactionLine',
  repeatability: 'repeatabilityLine',
};
const SINGLE = { F_interaction: 'fInteraction_ratio', p_interaction: 'pInteraction_frac' };
const COMPONENTS = {
  ...{ var_repeatability: 'varianceRepeatability_data2', var_interaction: 'varianceInteraction_data2' },
  ...{ var_appraiser: 'varianceAppraiser_data2', var_part: 'variancePart_data2' },
  ...{ EV: 'equipment_data', AV: 'appraiser_data', GRR: 'gauge_data', PV: 'part_data', TV: 'total_data' },
  ...{ pct_study_GRR: 'gaugeOfStudy_pct', pct_contribution_GRR: 'gaugeContribution_pct' },
  ...{ pct_tolerance_GRR: 'gaugeOfTolerance_pct', ndc_unrounded: 'categories_ratio', ndc: 'categoriesCount' },
  ...{ ms_pooled: 'meanSquareError_data2', F_part: 'fPart_ratio', F_appraiser: 'fAppraiser_ratio' },
};

/** One case of one part: the tests of the unpooled analysis stand with its components. A name not known drops the whole case. */
function gauge({ inputs, expected, tolerance = {} }) {
  const level = Object.keys(expected).find((name) => name.startsWith('pool_at_'));
  const places = Object.entries(expected).flatMap(([name, value]) => placesOf(name === level ? 'pool' : name, value));
  if (places.some(([, key]) => key === undefined)) return [];
  const wanted = { withInteraction: {} };
  for (const [group, key, value] of places) {
    if (group === undefined) wanted[key] = value;
    else wanted[group] = { ...wanted[group], [key]: value };
  }
  return [
    {
      method: 'statistics.crossed-gauge',
      inputs: {
        parts: inputs.cells.map((row) => ({ appraisers: row.map((values_data) => ({ values_data })) })),
        ...(inputs.tolerance == null ? {} : { tolerance_data: inputs.tolerance }),
        ...(level === undefined ? {} : { poolingLevel_frac: Number(level.slice('pool_at_'.length)) }),
      },
      expected: wanted,
      tolerance: withFields(tolerance),
    },
  ];
}

/** Where the numbers of one name of the set are found: group of outputs (none: at the top), key, value; a name not known has no key. */
function placesOf(name, value) {
  if (LINES[name]) return Object.entries(value).map(([source, one]) => [SOURCES[source], LINES[name], one]);
  if (SINGLE[name]) return [[undefined, SINGLE[name], value]];
  if (name === 'pool') return [[undefined, 'isPooled', value]];
  if (name === 'F_part' || name === 'F_appraiser') return [['withInteraction', COMPONENTS[name], value]];
  if (name !== 'with_interaction' && name !== 'pooled') return [[undefined, undefined, value]];
  const group = name === 'pooled' ? 'pooled' : 'withInteraction';
  return Object.entries(value).map(([own, one]) => [group, COMPONENTS[own], one]);
}

/** Tolerances of single numbers go with them under their new name. */
function withFields({ fields, ...own }) {
  if (!fields) return own;
  const names = { ...LINES, ...SINGLE, ...COMPONENTS };
  return {
    ...own,
    fields: Object.fromEntries(Object.entries(fields).map(([name, one]) => [names[name] ?? name, one])),
  };
}

import { renamedFields } from '../renamed-fields.mjs';

const NAMES = {
  B: 'standardBand_ratio',
  AAI: 'meanInterval',
  g: 'meanSquare_ratio',
  msd_ratio: 'meanSquareDeviation_ratio',
  sd_increase_pct: 'sdIncrease_pct',
  observed: 'observed_data',
  forecast_deviation_before_adjustment: 'forecasts_data',
  change: 'changes_steps',
};

export function cases(given) {
  return KINDS[given.inputs.what]?.(given) ?? [];
}

const KINDS = { 'bounded adjustment': bounded, 'integral adjustment every time': everyTime, sequence };

function bounded({ inputs, expected, tolerance }) {
  const { B, AAI, g, msd_ratio, sd_increase_pct } = expected;
  return [
    {
      method: 'statistics.bounded-adjustment',
      inputs: { lambda_frac: inputs.lam, deadBand_ratio: inputs.L_over_sigma_a },
      expected: {
        ...{ standardBand_ratio: B, meanInterval: AAI, meanSquare_ratio: g },
        ...{ meanSquareDeviation_ratio: msd_ratio, sdIncrease_pct: sd_increase_pct },
      },
      tolerance: renamedFields(tolerance, NAMES),
    },
  ];
}

function everyTime({ inputs, expected, tolerance }) {
  return [
    {
      method: 'statistics.integral-adjustment',
      inputs: { lambda_frac: inputs.lam, correction_frac: inputs.G },
      expected: { variance_ratio: expected.variance_ratio },
      tolerance: renamedFields(tolerance, NAMES),
    },
  ];
}

function sequence({ inputs, expected, tolerance }) {
  const { disturbance, target, lam, L, gain, max_change } = inputs;
  return [
    {
      method: 'statistics.adjustment-sequence',
      inputs: {
        ...{ disturbance_data: disturbance, target_data: target, lambda_frac: lam, deadBand_data: L },
        ...{ gain_data_per_step: gain, ...(max_change == null ? {} : { maxChange_steps: max_change }) },
      },
      expected: {
        ...{ observed_data: expected.observed, forecasts_data: expected.forecast_deviation_before_adjustment },
        ...{ changes_steps: expected.change, changeCount: expected.n_changes },
      },
      tolerance: renamedFields(tolerance, NAMES),
    },
  ];
}

import { adjustmentSequence, bestDeadBand, boundedAdjustment, integralAdjustmentRatio } from '@fillwright/stats/charts';
import { defineEntry, type Entry } from '#catalogue';
import { data, dataList, LAMBDA, pure, TARGET } from './fields.ts';
import { fromStats } from '../from-stats.ts';

const BOOK = {
  text: 'G. E. P. Box, A. Luceno, Statistical Control by Monitoring and Feedback Adjustment (1997)',
  read: 'from memory',
} as const;
const NO_DELAY =
  'Disturbance IMA(0,1,1) with this lambda, gain known, a change takes full effect on the next observation. With a delay, or sampling every m strokes with the lambda of every stroke, it does not apply.';
const BAND = {
  ...pure(
    'deadBand_ratio',
    'half width L of the dead band on the forecast, in standard deviations of the forecast error',
  ),
  above: 0,
  max: 100,
} as const;
const COST = { kind: 'number', unit: '1' } as const;
const EXACT = [
  pure('standardBand_ratio', 'dead band in steps of the forecast, B'),
  pure('meanInterval', 'mean number of observations between changes'),
  pure('meanSquare_ratio', 'mean square g of the forecast in steps'),
  pure('meanSquareDeviation_ratio', 'mean square deviation from target over that of the forecast error'),
  { key: 'sdIncrease_pct', title: 'increase of the standard deviation around the target', kind: 'number', unit: '%' },
] as const;

function exact(found: ReturnType<typeof boundedAdjustment>): {
  standardBand_ratio: number;
  meanInterval: number;
  meanSquare_ratio: number;
  meanSquareDeviation_ratio: number;
  sdIncrease_pct: number;
} {
  return {
    ...{ standardBand_ratio: found.standardBand, meanInterval: found.interval, meanSquare_ratio: found.meanSquare },
    ...{ meanSquareDeviation_ratio: found.meanSquareRatio, sdIncrease_pct: found.sdIncrease_pct },
  };
}

/** Feedback adjustment. */
export const adjustmentEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.bounded-adjustment',
    title: 'Cost of a dead band: interval between changes and deviation from target',
    equation: 'B = \\frac{L}{\\lambda\\sigma_a},\\quad \\frac{MSD}{\\sigma_a^2} = 1+\\lambda^2 g(B)',
    inputs: [
      LAMBDA,
      BAND,
      {
        key: 'delayCount',
        title: 'observations of delay: only none is known',
        kind: 'integer',
        unit: '1',
        min: 0,
        max: 100,
        optional: true,
      },
    ],
    outputs: [
      ...EXACT,
      pure('approximateInterval', 'interval by the approximation of the book'),
      pure('approximateMeanSquare_ratio', 'mean square by the approximation of the book'),
    ],
    sources: [BOOK],
    validity: `${NO_DELAY} A delay is refused; B at most 100.`,
    restsOn: 'mean exit time and visited states of a random walk, by integral equation',
    compute: ({ lambda_frac, deadBand_ratio, delayCount = 0 }) => {
      const found = fromStats(() => boundedAdjustment({ lambda: lambda_frac, deadBand: deadBand_ratio, delayCount }));
      const { approximateInterval, approximateMeanSquare } = found;
      return { ...exact(found), approximateInterval, approximateMeanSquare_ratio: approximateMeanSquare };
    },
  }),
  defineEntry({
    id: 'statistics.best-dead-band',
    title: 'The dead band of least cost',
    equation: 'C = \\frac{C_A}{AAI}+C_T\\frac{MSD}{\\sigma_a^2}',
    inputs: [
      LAMBDA,
      { key: 'changeCost', title: 'cost of one change', ...COST, min: 0 },
      {
        key: 'offTargetCost',
        title: 'cost of one interval at a mean square of one squared forecast error',
        ...COST,
        above: 0,
      },
    ],
    outputs: [
      BAND,
      ...EXACT,
      { key: 'cost', title: 'mean cost of one interval', ...COST },
      { key: 'everyTimeCost', title: 'the same with a change after every observation', ...COST },
    ],
    sources: [BOOK],
    validity: `${NO_DELAY} Costs in any one unit. The cost of looking is not in it.`,
    restsOn: 'golden section over the logarithm of B, 0.01 to 100',
    compute: ({ lambda_frac, changeCost, offTargetCost }) => {
      const found = fromStats(() => bestDeadBand({ lambda: lambda_frac, changeCost, offTargetCost }));
      const { deadBand, cost, everyTimeCost } = found;
      return { deadBand_ratio: deadBand, ...exact(found), cost, everyTimeCost };
    },
  }),
  defineEntry({
    id: 'statistics.integral-adjustment',
    title: 'Variance when a share of every deviation is taken back',
    equation: '\\frac{\\sigma_e^2}{\\sigma_a^2} = 1+\\frac{(G-\\lambda)^2}{G(2-G)}',
    inputs: [
      { ...LAMBDA, title: 'lambda of the disturbance, 0 for pure noise', min: 0 },
      { ...pure('correction_frac', 'share G of each deviation taken back'), above: 0, below: 2 },
    ],
    outputs: [pure('variance_ratio', 'variance around the target over that of the forecast error')],
    sources: [BOOK],
    validity: `${NO_DELAY} On pure noise full correction doubles the variance.`,
    restsOn: 'closed form of the closed loop',
    compute: ({ lambda_frac, correction_frac }) => ({
      variance_ratio: fromStats(() => integralAdjustmentRatio({ lambda: lambda_frac, correction: correction_frac })),
    }),
  }),
  defineEntry({
    id: 'statistics.adjustment-sequence',
    title: 'Feedback adjustment with a dead band, observation by observation',
    equation: 'f_i = f_{i-1}+\\lambda(x_i-\\mu-f_{i-1}),\\quad \\Delta = -\\frac{f_i}{g}\\ \\text{when}\\ |f_i| \\ge L',
    inputs: [
      dataList('disturbance_data', 'what would be observed without any change'),
      TARGET,
      LAMBDA,
      { ...data('deadBand_data', 'half width L of the dead band on the forecast'), min: 0 },
      {
        key: 'gain_data_per_step',
        title: 'gain g: change of the observation per step of the setting, not 0',
        kind: 'number',
        unit: 'data/step',
      },
      {
        key: 'maxChange_steps',
        title: 'largest change at once',
        kind: 'number',
        unit: 'steps',
        above: 0,
        optional: true,
      },
    ],
    outputs: [
      dataList('observed_data', 'observations'),
      dataList('forecasts_data', 'forecasts of the next deviation, before a change'),
      {
        key: 'changes_steps',
        title: 'changes of the setting',
        kind: 'number',
        unit: 'steps',
        list: { min: 1, max: 10_000 },
      },
      { key: 'changeCount', title: 'changes', kind: 'integer', unit: '1' },
    ],
    sources: [BOOK],
    validity: `${NO_DELAY} What a capped change leaves stays in the forecast.`,
    restsOn: 'the rule itself',
    compute: ({ disturbance_data, target_data, lambda_frac, deadBand_data, gain_data_per_step, maxChange_steps }) => {
      const steps = fromStats(() =>
        adjustmentSequence({
          ...{ disturbance: disturbance_data, target: target_data, lambda: lambda_frac, deadBand: deadBand_data },
          ...{ gain: gain_data_per_step, ...(maxChange_steps === undefined ? {} : { maxChange: maxChange_steps }) },
        }),
      );
      return {
        observed_data: steps.map(({ observed }) => observed),
        forecasts_data: steps.map(({ forecast }) => forecast),
        changes_steps: steps.map(({ change }) => change),
        changeCount: steps.filter(({ change }) => change !== 0).length,
      };
    },
  }),
];

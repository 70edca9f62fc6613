import { renamedFields } from '../renamed-fields.mjs';

const WESTERN_ELECTRIC = {
  1: 'one-beyond-3-sigma',
  2: 'two-of-three-beyond-2-sigma',
  3: 'four-of-five-beyond-1-sigma',
  4: 'eight-on-one-side',
};

/** The rules that a title names in words. */
const IN_WORDS = [
  [/1 point beyond 3 sigma/, 'one-beyond-3-sigma'],
  [/2 of 3/, 'two-of-three-beyond-2-sigma'],
  [/4 of 5/, 'four-of-five-beyond-1-sigma'],
  [/seven on one side/i, 'seven-on-one-side'],
  [/eight on one side/i, 'eight-on-one-side'],
  [/nine on one side/i, 'nine-on-one-side'],
];

const LIMITS = { asymptotic: 'constant', 'exact time-varying': 'time-varying' };
const STARTS = { 'zero state': 'fresh' };

const NAMES = {
  arl: 'meanRunLength',
  arl_R: 'rangesRunLength',
  arl_S: 'sdsRunLength',
  h: 'decisionInterval_ratio',
};

export function cases(given) {
  const tolerance = renamedFields(given.tolerance, NAMES);
  return converted(given).map((one) => ({ ...one, tolerance }));
}

function converted({ inputs, expected }) {
  const { chart = '', shift_sigma: shift_ratio = 0 } = inputs;
  const runLength = { meanRunLength: expected.arl };
  if (chart === 'Shewhart mean') {
    const design = { limitFactor_ratio: inputs.L, subgroupSize: inputs.n, shift_ratio };
    return [{ method: 'statistics.shewhart-run-length', inputs: design, expected: runLength }];
  }
  const rules = rulesOf(inputs);
  if (rules.length > 0)
    return [{ method: 'statistics.rules-run-length', inputs: { rules, shift_ratio }, expected: runLength }];
  if (chart === 'EWMA') return ewma(inputs, expected);
  if (chart === 'CUSUM two-sided') return cusum(inputs, expected);
  if (chart === 'I-MR combined') {
    const { individual_limit_sigma, mr_limit_sigma, sigma_ratio } = inputs;
    const limits = { individualLimit_ratio: individual_limit_sigma, movingRangeLimit_ratio: mr_limit_sigma };
    const design = { ...limits, shift_ratio, sigma_ratio };
    return [{ method: 'statistics.individuals-run-length', inputs: design, expected: runLength }];
  }
  if (!/^range and SD charts/.test(chart)) return [];
  return [
    {
      method: 'statistics.dispersion-run-length',
      inputs: { subgroupSize: inputs.n, sigma_ratio: inputs.sigma_ratio },
      expected: { rangesRunLength: expected.arl_R, sdsRunLength: expected.arl_S },
    },
  ];
}

function rulesOf({ chart = '', rules = '' }) {
  if (chart === 'Shewhart with Western Electric rules') return [...rules].map((rule) => WESTERN_ELECTRIC[rule]);
  if (!chart.startsWith('Shewhart with ')) return [];
  return IN_WORDS.filter(([words]) => words.test(chart)).map(([, rule]) => rule);
}

function ewma({ lam, L, limits, start, shift_sigma }, { arl }) {
  if (LIMITS[limits] === undefined || STARTS[start] === undefined) return [];
  const design = { lambda_frac: lam, limitFactor_ratio: L, shift_ratio: shift_sigma };
  const choices = { limits: LIMITS[limits], start: STARTS[start] };
  return [
    { method: 'statistics.ewma-run-length', inputs: { ...design, ...choices }, expected: { meanRunLength: arl } },
  ];
}

function cusum({ find, k, h, arl0, headstart_fraction: headStart_frac = 0, shift_sigma, start }, expected) {
  if (find === 'h') {
    const wish = { reference_ratio: k, inControlRunLength: arl0, headStart_frac };
    return [
      { method: 'statistics.cusum-decision-interval', inputs: wish, expected: { decisionInterval_ratio: expected.h } },
    ];
  }
  if (find !== undefined || STARTS[start] === undefined) return [];
  const design = { reference_ratio: k, decisionInterval_ratio: h, shift_ratio: shift_sigma, headStart_frac };
  return [{ method: 'statistics.cusum-run-length', inputs: design, expected: { meanRunLength: expected.arl } }];
}

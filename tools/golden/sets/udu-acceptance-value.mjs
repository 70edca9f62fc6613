const STAGE_1 = 10;
const METHODS = { 'weight variation': 'mass-variation', 'content uniformity': 'content-uniformity' };
const VERDICTS = {
  'test 20 more': { verdict: 'cannot-tell', next: 'test-further-units' },
  pass: { verdict: 'pass', next: 'none' },
  fail: { verdict: 'fail', next: 'investigate' },
};

/** Contents or masses in, every number of each stage and both verdicts out; statistics in; choice of method. */
export function cases({ inputs, expected }) {
  switch (inputs.method) {
    case 'from statistics':
      return [fromStatistics(inputs, expected)];
    case 'content uniformity':
      return byContent(inputs, expected);
    case 'weight variation, hard capsules':
      return byMass(inputs, expected);
    case 'choose':
      return choice(inputs, expected);
    default:
      return [];
  }
}

const limits = ({ T, L1, L2 }) => ({ target_pct: T, acceptanceLimit_pct: L1, unitDeviation_pct: L2 });

function fromStatistics({ n, mean, s, T, L2 }, { M, AV, AV_rounded, individual_low, individual_high }) {
  return {
    method: 'statistics.acceptance-value',
    inputs: { mean_pct: mean, sd_pct: s, unitCount: n, target_pct: T, unitDeviation_pct: L2 },
    expected: {
      ...{ reference_pct: M, acceptanceValue_pct: AV, roundedAcceptanceValue_pct: AV_rounded },
      ...{ lowestUnit_pct: individual_low, highestUnit_pct: individual_high },
    },
  };
}

function byContent(inputs, expected) {
  const all = inputs.contents_pct;
  const [contents_pct, further] = [all.slice(0, STAGE_1), all.slice(STAGE_1)];
  const stage = (part, values, found) => ({
    ...{ part, method: 'statistics.acceptance-value-of-units', inputs: { contents_pct: values, ...limits(inputs) } },
    expected: stageValues(found),
  });
  const verdict = (rounding, found) => ({
    ...{ part: `verdict-${rounding}`, method: 'statistics.uniformity-of-dosage-units' },
    inputs: {
      contents_pct,
      ...(further.length > 0 && { furtherContents_pct: further }),
      ...{ ...limits(inputs), rounding, route: ['dosage-units-by-content'], purpose: 'release' },
    },
    expected: VERDICTS[found] ?? { verdict: found },
  });
  return [
    stage('stage-1', contents_pct, expected.stage1),
    ...(expected.stage2 ? [stage('stage-2', all, expected.stage2)] : []),
    verdict('unrounded', expected.verdict_unrounded),
    verdict('halfUp', expected.verdict_rounded),
  ];
}

function byMass({ gross_mg, shell_mg, assay_pct, ...given }, expected) {
  const stage = (part, count, found) => ({
    ...{ part, method: 'statistics.acceptance-value-by-mass' },
    inputs: { gross_mg: gross_mg.slice(0, count), shells_mg: shell_mg.slice(0, count), assay_pct, ...limits(given) },
    expected: found,
  });
  const { mean_net_10, mean_net_30, contents_10, contents_30, stage1, stage2 } = expected;
  const contents = (found) => (found === undefined ? {} : { contents_pct: found });
  return [
    stage('stage-1', STAGE_1, { meanNet_mg: mean_net_10, ...contents(contents_10), ...stageValues(stage1) }),
    ...(stage2
      ? [stage('stage-2', 30, { meanNet_mg: mean_net_30, ...contents(contents_30), ...stageValues(stage2) })]
      : []),
  ];
}

function choice({ dose_form, drug_mg, contents_mg }, { ratio_pct, method }) {
  if (dose_form !== 'hard capsule') return [];
  return [
    {
      method: 'statistics.dosage-unit-method',
      inputs: { dose_mg: drug_mg, contents_mg },
      expected: { share_pct: ratio_pct, method: METHODS[method] },
    },
  ];
}

/** The numbers of a stage under the keys of the catalogue. */
function stageValues(found) {
  const named = {
    ...{ unitCount: found.n, mean_pct: found.mean, sd_pct: found.s, reference_pct: found.M },
    ...{ referenceCase: found.M_case, acceptanceValue_pct: found.AV, roundedAcceptanceValue_pct: found.AV_rounded },
    ...{ isMetUnrounded: found.passes_unrounded, isMetRounded: found.passes_rounded },
    ...{ lowestUnit_pct: found.individual_low, highestUnit_pct: found.individual_high },
    ...{ belowCount: found.n_below, aboveCount: found.n_above },
  };
  return Object.fromEntries(Object.entries(named).filter(([, value]) => value !== undefined));
}

import { complete } from '../check-of.mjs';

/** Names of the set by place in the outputs: `group.key` or `key`. */
const KINDS = {
  'from statistics': {
    ...{ cp: 'cp.value_ratio', cp_low: 'cp.low_ratio', cp_high: 'cp.high_ratio' },
    ...{ cp_lower_one_sided: 'cp.lowerOneSided_ratio', cpm: 'cpm_ratio', cpk: 'cpk.value_ratio' },
    ...{ cpu: 'cpu_ratio', cpl: 'cpl_ratio', cpk_low: 'cpk.low_ratio', cpk_high: 'cpk.high_ratio' },
    ...{ cpk_lower_one_sided: 'cpk.lowerOneSided_ratio', expected_outside_ppm: 'outside_ppm' },
  },
  'from subgroups': {
    ...{ mean: 'mean_data', overall_s: 'overallSd_data', within_pooled: 'pooledSd_data', within_rbar: 'rangeSd_data' },
    ...{ within_sbar: 'meanSdSd_data', cp: 'cp.value_ratio', cpk: 'cpk.value_ratio' },
    ...{ pp: 'pp.value_ratio', ppk: 'ppk.value_ratio' },
  },
};
const LAWS = {
  normal: 'normal',
  lognormal: 'lognormal',
  weibull: 'weibull',
  'half normal': 'half-normal',
  gamma: 'gamma',
};

function known(fields) {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined && value !== null));
}

export function cases(given) {
  const { kind, n, mean, sd, lsl, usl, confidence } = given.inputs;
  const limits = { lower_data: lsl, upper_data: usl, confidence_frac: confidence };
  if (kind === 'from statistics') {
    const own = { unitCount: n, mean_data: mean, sd_data: sd, target_data: given.inputs.target };
    return grouped(given, 'statistics.capability-indices', known({ ...own, ...limits }));
  }
  if (kind === 'from subgroups') {
    const subgroups = given.inputs.subgroups.map((values_data) => ({ values_data }));
    return grouped(given, 'statistics.capability-from-subgroups', known({ subgroups, ...limits }));
  }
  if (kind === 'exact lower bound of a one-sided index') {
    const index_ratio = (usl == null ? mean - lsl : usl - mean) / (3 * sd);
    const inputs = known({ unitCount: n, index_ratio, confidence_frac: confidence });
    return complete(given, [{ method: 'statistics.capability-exact-lower', inputs, names: { lower_ratio: 'lower' } }]);
  }
  return kind === 'percentile method' ? percentile(given, limits) : [];
}

function percentile(given, limits) {
  const { distribution, parameters } = given.inputs;
  if (!LAWS[distribution]) return [];
  const names = {
    ...{ low_data: 'x_00135', median_data: 'x_50', high_data: 'x_99865', pp_ratio: 'pp', ppu_ratio: 'ppu' },
    ...{ ppl_ratio: 'ppl', ppk_ratio: 'ppk', outside_ppm: 'outside_ppm' },
  };
  const inputs = known({ law: LAWS[distribution], parameters_ratio: parameters, ...limits });
  return complete(given, [{ method: 'statistics.capability-percentile', inputs, names }]);
}

/** Two indices share a key: a number with a tolerance of its own becomes a case of its own. */
function grouped({ inputs: { kind }, expected, tolerance = {} }, method, inputs) {
  const places = KINDS[kind];
  if (Object.keys(expected).some((name) => !places[name])) return [];
  const { fields = {}, ...own } = tolerance;
  const names = Object.keys(expected);
  const together = names.filter((name) => !fields[name]);
  const alone = names.filter((name) => fields[name]);
  const outputs = (some) => {
    const wanted = {};
    for (const name of some) {
      const [group, key] = places[name].split('.');
      wanted[group] = key === undefined ? expected[name] : { ...wanted[group], [key]: expected[name] };
    }
    return wanted;
  };
  return [
    ...(together.length > 0 ? [{ method, inputs, expected: outputs(together), tolerance: own }] : []),
    ...alone.map((name) => ({ part: name, method, inputs, expected: outputs([name]), tolerance: fields[name] })),
  ];
}

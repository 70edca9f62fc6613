const MODELS = new Map([
  ['full quadratic', 'quadratic'],
  ['quadratic', 'quadratic'],
  ['main effects and two-factor interactions', 'interactions'],
  ['two-factor interactions', 'interactions'],
  ['main effects', 'main-effects'],
  ['linear', 'main-effects'],
]);
const asRuns = (rows) => rows?.map((levels_ratio) => ({ levels_ratio }));

/** The keys whose values are there. */
const given = (values) => Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));

const design = ({ runs, sorted_rows, alpha, log_det, d_efficiency }) =>
  given({
    ...{ runCount: runs, runs: asRuns(sorted_rows), alpha_ratio: alpha },
    ...{ logDeterminant_ratio: log_det, dEfficiency_ratio: d_efficiency },
  });

/** Factors are lettered without I in the catalogue, perhaps with it in the case: the first factor that is I moves all behind it. */
function lettering(texts) {
  const hasI = texts.some((text) => text.includes('I'));
  const next = (letter) => (letter >= 'I' ? String.fromCharCode(letter.charCodeAt(0) + 1) : letter);
  return (text) => (hasI ? text.replace(/[A-Z]/g, next) : text);
}

const KINDS = {
  'full factorial 2 level': ({ k }, expected) => ({
    ...{ method: 'statistics.full-factorial', inputs: { factorCount: k, order: 'sorted' } },
    expected: design(expected),
  }),
  'fractional factorial': ({ k, generators }, { defining_relation, resolution, ...expected }) => {
    const texts = Object.entries(generators).map(([factor, word]) => `${factor}=${word}`);
    const lettered = lettering([...texts, ...(defining_relation ?? [])]);
    const inputs = { factorCount: k, generators: texts.map(lettered).sort(), order: 'sorted' };
    return {
      ...{ method: 'statistics.fractional-factorial', inputs },
      expected: given({ ...design(expected), definingRelation: defining_relation?.map(lettered), resolution }),
    };
  },
  'Box-Behnken': ({ k, n_center }, expected) => ({
    ...{ method: 'statistics.box-behnken', inputs: { factorCount: k, centreCount: n_center, order: 'sorted' } },
    expected: design(expected),
  }),
  'central composite': ({ k, type, n_center, generators }, expected) => ({
    method: 'statistics.central-composite',
    inputs: given({
      ...{ factorCount: k, axial: type.replace('centered', 'centred'), centreCount: n_center, order: 'sorted' },
      generators: generators && Object.entries(generators).map(([factor, word]) => `${factor}=${word}`),
    }),
    expected: design(expected),
  }),
  'D-optimal': ({ k, model, candidates, runs }, { best_log_det, d_efficiency }) => {
    const levels = /^(\d+)-level grid$/.exec(candidates)?.[1];
    if (!MODELS.has(model) || (levels === undefined && !Array.isArray(candidates))) return [];
    return {
      method: 'statistics.d-optimal-design',
      inputs: {
        ...{ factorCount: k, model: MODELS.get(model), runCount: runs },
        ...(levels === undefined ? { candidates: asRuns(candidates) } : { levelCount: Number(levels) }),
      },
      expected: design({ log_det: best_log_det, d_efficiency }),
    };
  },
  'response surface, full quadratic': ({ X, y }, expected) => ({
    method: 'statistics.response-surface',
    inputs: { runs: asRuns(X), responses_data: y, model: 'quadratic' },
    expected: surface(expected),
  }),
  '2^k effects, standard order': ({ y }, expected) => ({
    ...{ method: 'statistics.two-level-effects', inputs: { responses_data: y } },
    expected: given({
      ...{ mean_data: expected.mean, pseudoStandardError_data: expected.lenth_pse },
      marginOfError_data: expected.lenth_margin_of_error,
      simultaneousMargin_data: expected.lenth_simultaneous_margin,
      effects: effects(expected),
    }),
  }),
};

function effects({ effects: sizes, sum_of_squares: squares }) {
  const names = Object.keys(sizes).sort((a, b) => a.length - b.length || (a < b ? -1 : 1));
  return names.map((name) => given({ name, effect_data: sizes[name], sumOfSquares_data2: squares?.[name] }));
}

const termName = (name) => (name === '(Intercept)' ? '1' : name.replace(/^I\((.*)\)$/, '$1'));

function surface(expected) {
  const { terms, coef, se, t, p } = expected;
  return given({
    terms: terms.map((name, k) =>
      given({
        ...{ name: termName(name), estimate_data: coef[k], standardError_data: se?.[k] },
        ...{ t_ratio: t?.[k], p_frac: p?.[k] },
      }),
    ),
    ...{ residualSumOfSquares_data2: expected.rss, degreesOfFreedom: expected.df, residualSd_data: expected.s },
    ...{ rSquared_ratio: expected.r2, rSquaredAdjusted_ratio: expected.r2_adjusted, f_ratio: expected.F },
    ...{ press_data2: expected.press, rSquaredPrediction_ratio: expected.r2_prediction },
    ...{ pureError_data2: expected.ss_pure_error, pureErrorDf: expected.df_pure_error },
    ...{ lackOfFit_data2: expected.ss_lack_of_fit, lackOfFitDf: expected.df_lack_of_fit },
    ...{ lackOfFitF_ratio: expected.F_lack_of_fit, lackOfFitP_frac: expected.p_lack_of_fit },
    ...{ stationaryPoint_ratio: expected.stationary_point, stationaryValue_data: expected.stationary_value },
    ...{ eigenvalues_data: expected.eigenvalues, nature: expected.nature },
  });
}

const NAMES = {
  ...{ alpha: 'alpha_ratio', log_det: 'logDeterminant_ratio', best_log_det: 'logDeterminant_ratio' },
  ...{ d_efficiency: 'dEfficiency_ratio', sorted_rows: 'runs', mean: 'mean_data', effects: 'effect_data' },
  ...{ sum_of_squares: 'sumOfSquares_data2', lenth_pse: 'pseudoStandardError_data' },
  ...{ lenth_margin_of_error: 'marginOfError_data', lenth_simultaneous_margin: 'simultaneousMargin_data' },
  ...{ coef: 'estimate_data', se: 'standardError_data', t: 't_ratio', p: 'p_frac', rss: 'residualSumOfSquares_data2' },
  ...{ s: 'residualSd_data', r2: 'rSquared_ratio', r2_adjusted: 'rSquaredAdjusted_ratio', F: 'f_ratio' },
  ...{ press: 'press_data2', r2_prediction: 'rSquaredPrediction_ratio', ss_pure_error: 'pureError_data2' },
  ...{ ss_lack_of_fit: 'lackOfFit_data2', F_lack_of_fit: 'lackOfFitF_ratio', p_lack_of_fit: 'lackOfFitP_frac' },
  ...{ stationary_point: 'stationaryPoint_ratio', stationary_value: 'stationaryValue_data' },
  eigenvalues: 'eigenvalues_data',
};

/** Designs, their figures of merit, and fits; each case is one check. */
export function cases({ inputs, expected, tolerance = {} }) {
  const kind = KINDS[inputs.kind];
  const { fields, ...own } = tolerance;
  const renamed = Object.entries(fields ?? {}).map(([name, value]) => [NAMES[name] ?? name, value]);
  const at = fields ? { ...own, fields: Object.fromEntries(renamed) } : own;
  return kind ? [kind(inputs, expected)].flat().map((one) => ({ ...one, tolerance: at })) : [];
}

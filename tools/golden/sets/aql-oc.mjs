/** Per kind of question: its inputs as the catalogue names them, and which expected number is which output. */
const KINDS = {
  Pa: ({ n, ac, p }) =>
    byLaw('statistics.attribute-acceptance', { ...plan(n, ac), qualities_ratio: [p] }, 'accepted_frac'),
  'quality at Pa': ({ n, ac, pa }) =>
    byLaw('statistics.attribute-quality', { ...plan(n, ac), accepted_frac: pa }, 'quality_ratio'),
  'Pa in a finite lot': ({ N, D, n, ac }) => [
    {
      method: 'statistics.attribute-acceptance-in-lot',
      inputs: { ...lot(N, D), ...plan(n, ac) },
      names: { hypergeometric: 'accepted_frac' },
    },
  ],
  'zero-acceptance sample size': ({ N, D, max_pa }) => [
    {
      method: 'statistics.zero-acceptance-size',
      inputs: { ...lot(N, D), acceptedAtMost_frac: max_pa },
      names: {
        n: 'sampleSize',
        pa: 'accepted_frac',
        pa_one_less: 'acceptedOneLess_frac',
        n_binomial: 'seriesSampleSize',
      },
    },
  ],
  'double plan': ({ n1, n2, ac1, re1, ac2, re2, p }) => [
    {
      method: 'statistics.double-plan-acceptance',
      inputs: {
        ...{ firstSampleSize: n1, firstAcceptanceNumber: ac1, firstRejectionNumber: re1 },
        ...{ secondSampleSize: n2, secondAcceptanceNumber: ac2, secondRejectionNumber: re2 },
        ...{ qualities_ratio: [p], law: 'binomial' },
      },
      names: { pa: 'accepted_frac', asn: 'averageSampleCount', p_decide_first: 'decidedAtFirst_frac' },
      isList: true,
    },
  ],
};
const COUNTS = ['n', 'n_binomial'];

const plan = (n, ac) => ({ sampleSize: n, acceptanceNumber: ac });
const lot = (N, D) => ({ lotSize: N, nonconformingCount: D });
/** One check case per law, of which the set holds both. */
const byLaw = (method, inputs, output) =>
  ['binomial', 'poisson'].map((law) => ({
    ...{ part: law, method, inputs: { ...inputs, law }, names: { [law]: output } },
    isList: output === 'accepted_frac',
  }));

export function cases({ inputs, expected, tolerance = {} }) {
  const { fields = {}, ...own } = tolerance;
  const found = KINDS[inputs.what]?.(inputs) ?? [];
  const known = found.flatMap(({ names }) => Object.keys(names));
  if (Object.keys(expected).some((name) => !known.includes(name))) return [];
  return found.flatMap(({ names, isList = false, ...check }) => {
    const given = Object.keys(names).filter((name) => name in expected);
    const valueOf = (name) => (isList ? [expected[name]] : expected[name]);
    const allowed = (name) => (COUNTS.includes(name) ? { abs: 0 } : (fields[name] ?? own));
    if (given.length === 0) return [];
    return [
      {
        ...check,
        expected: Object.fromEntries(given.map((name) => [names[name], valueOf(name)])),
        tolerance: { ...own, fields: Object.fromEntries(given.map((name) => [names[name], allowed(name)])) },
      },
    ];
  });
}

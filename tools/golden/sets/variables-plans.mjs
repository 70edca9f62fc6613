export function cases({ inputs, expected, tolerance = {} }) {
  const [, kind, sd] = /^(k method|design), sigma (known|unknown)/.exec(inputs.what) ?? [];
  const { fields = {}, ...own } = tolerance;
  const of = (name) => fields[name] ?? own;
  if (kind === 'k method')
    return [
      {
        method: 'statistics.variables-acceptance',
        inputs: { sampleSize: inputs.n, factor_ratio: inputs.k, sd, qualities_frac: [inputs.p] },
        ...{ expected: { accepted_frac: [expected.pa] }, tolerance: of('pa') },
      },
    ];
  if (kind !== 'design') return [];
  return [
    {
      method: 'statistics.variables-design',
      inputs: {
        ...{ producerQuality_frac: inputs.p_producer, producerRisk_frac: inputs.alpha },
        ...{ consumerQuality_frac: inputs.p_consumer, consumerRisk_frac: inputs.beta, sd },
      },
      expected: {
        ...{ sampleSize: expected.n, factor_ratio: expected.k },
        acceptedAtConsumer_frac: expected.pa_at_consumer,
      },
      tolerance: {
        ...own,
        fields: { sampleSize: { abs: 0 }, factor_ratio: of('k'), acceptedAtConsumer_frac: of('pa_at_consumer') },
      },
    },
  ];
}

const NAMES = {
  one_beyond_3s: 'one-beyond-3-sigma',
  two_of_three_beyond_2s: 'two-of-three-beyond-2-sigma',
  four_of_five_beyond_1s: 'four-of-five-beyond-1-sigma',
  seven_same_side: 'seven-on-one-side',
  eight_same_side: 'eight-on-one-side',
  nine_same_side: 'nine-on-one-side',
  six_trend: 'six-rising-or-falling',
  fourteen_alternating: 'fourteen-alternating',
  fifteen_within_1s: 'fifteen-within-1-sigma',
  eight_none_within_1s: 'eight-beyond-1-sigma-on-either-side',
};

/** All rules of a case at once, in its order: signals come rule by rule. No signal at all is a count of 0. */
export function cases({ inputs, expected }) {
  const wanted = Object.entries(expected.signals_at ?? {});
  if (wanted.length === 0 || wanted.some(([name]) => NAMES[name] === undefined)) return [];
  const signals = wanted.flatMap(([name, points]) => points.map((at) => ({ rule: NAMES[name], at })));
  return [
    {
      method: 'statistics.run-rules',
      inputs: {
        ...{ values_data: inputs.series, centre_data: inputs.centre, sigma_data: inputs.sigma },
        rules: wanted.map(([name]) => NAMES[name]),
      },
      expected: { signalCount: signals.length, ...(signals.length === 0 ? {} : { signals }) },
    },
  ];
}

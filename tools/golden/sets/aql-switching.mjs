/** Names of one lot's numbers in the set, and of the lists in the catalogue that hold them lot by lot. */
const KEYS = {
  ...{ plan_n: 'sampleSizes', plan_ac: 'acceptanceNumbers', plan_re: 'rejectionNumbers', accepted: 'accepted' },
  ...{ state_before: 'inspections', state_after: 'nextInspections', score_after: 'scores' },
};

/** Production is steady and reduced inspection permitted in the whole set, as its sources say. */
export function cases({ inputs, expected }) {
  const { scheme, lot, level, aql, nonconforming, limit_number: limitNumber } = inputs;
  const { lots } = expected;
  const names = Object.keys(lots[0] ?? {});
  if (names.length === 0 || names.some((name) => !(name in KEYS))) return [];
  return [
    {
      method: 'statistics.lot-history',
      inputs: {
        ...{ scheme, lotSizes: [lot], level, aql, nonconformingCounts: nonconforming, reducedPermitted: true },
        ...(limitNumber === undefined ? {} : { limitNumber }),
      },
      expected: Object.fromEntries(names.map((name) => [KEYS[name], lots.map((one) => one[name])])),
    },
  ];
}

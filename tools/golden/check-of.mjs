/**
 * One check case from a case of a set: `names` says under which name of the set each output of the method is expected. Outputs of which the
 * case says nothing are left away; a tolerance of its own goes with its number.
 */
export function checkOf({ expected, tolerance = {} }, { part, method, inputs, names }) {
  const known = Object.entries(names).filter(([, name]) => expected[name] !== undefined);
  const { fields = {}, ...own } = tolerance;
  const special = known.filter(([, name]) => fields[name]).map(([key, name]) => [key, fields[name]]);
  return {
    ...(part === undefined ? {} : { part }),
    ...{ method, inputs, expected: Object.fromEntries(known.map(([key, name]) => [key, expected[name]])) },
    tolerance: special.length > 0 ? { ...own, fields: Object.fromEntries(special) } : own,
  };
}

/** The check cases of a set's case, but none at all when a number of it would go unchecked. */
export function complete(given, checks) {
  const used = new Set(checks.flatMap(({ names }) => Object.values(names)));
  if (Object.keys(given.expected).some((name) => !used.has(name))) return [];
  return checks.map((check) => checkOf(given, check)).filter(({ expected }) => Object.keys(expected).length > 0);
}

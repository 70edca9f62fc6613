const MOST = 15;

/** A table in Markdown: one row per check case, the fewest digits of agreement of each kind of number. */
export function digitsTable(cases, compute) {
  const rows = cases.map((one) => ({ name: nameOf(one), digits: digitsByKey(one.expected, compute(one)) }));
  const keys = [...new Set(rows.flatMap(({ digits }) => [...digits.keys()]))];
  const line = (cells) => `| ${cells.join(' | ')} |`;
  const shown = (digits) => (digits === undefined ? '' : digits.toFixed(1));
  return [
    line(['data set', ...keys.map((key) => key.replace(/_.*/, ''))]),
    line(['---', ...keys.map(() => '---:')]),
    ...rows.map(({ name, digits }) => line([name, ...keys.map((key) => shown(digits.get(key)))])),
  ].join('\n');
}

/** `NIST StRD linear regression Norris; ...` and the part of the case. */
function nameOf({ id, source }) {
  const name = /^NIST StRD .*?(\w+);/.exec(source)?.[1] ?? id;
  const part = id.split('.')[1];
  return part === undefined ? name : `${name}, ${part.replaceAll('-', ' ')}`;
}

/** The fewest digits by key; the numbers of a list stand under the key of the list. */
function digitsByKey(expected, got) {
  const found = new Map();
  for (const [key, digits] of digitsIn(expected, got)) found.set(key, Math.min(found.get(key) ?? MOST, digits));
  return found;
}

function digitsIn(expected, got, key = '') {
  if (typeof expected === 'number') return [[key, digits(expected, got)]];
  if (typeof expected !== 'object' || expected === null) return [];
  const isList = Array.isArray(expected);
  return Object.entries(expected).flatMap(([inner, value]) => digitsIn(value, got?.[inner], isList ? key : inner));
}

function digits(expected, got) {
  const error = Math.abs(got - expected) / (expected === 0 ? 1 : Math.abs(expected));
  if (Number.isNaN(error)) return 0;
  return error === 0 ? MOST : Math.min(MOST, Math.max(0, -Math.log10(error)));
}

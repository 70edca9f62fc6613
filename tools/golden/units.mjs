/** Units of reference values: each family in multiples of one unit, exact factors by definition of the prefixes. */
const FAMILIES = [
  { mg: 1, g: 1000, kg: 1e6 },
  { mm: 1, um: 0.001, cm: 10, m: 1000 },
  { mm3: 1, uL: 1, mL: 1000, cm3: 1000 },
  { Pa: 1, kPa: 1e3, MPa: 1e6, GPa: 1e9 },
  { N: 1, mN: 0.001, kN: 1000 },
  { 'kg/m3': 1, 'g/mL': 1000, 'g/cm3': 1000, 'mg/mm3': 1000 },
  { 'mg/s': 1, 'g/s': 1000, 'kg/s': 1e6 },
  { 'mg/mm': 1, 'g/mm': 1000 },
  { '%': 1, '-': 100, 1: 100, fraction: 100 },
  { deg: 1 },
];

/** Factor from one unit to another; undefined when they do not measure the same. */
export function factor(from, to) {
  const family = FAMILIES.find((units) => from in units && to in units);
  return family && family[from] / family[to];
}

/** A scaled value without the noise of the multiplication; what is no number stays as it is. */
export function scaled(value, by) {
  if (Array.isArray(value)) return value.map((item) => scaled(item, by));
  return typeof value === 'number' ? Number((value * by).toPrecision(15)) : value;
}

/** The unit that a key ends in, as written in the families: `density_g_per_mL` -> `g/mL`. */
export function unitOfKey(key) {
  const suffix = key.slice(key.indexOf('_') + 1);
  return { pct: '%', frac: '-', ratio: '-' }[suffix] ?? suffix.replace('_per_', '/');
}

/** The units in a text like `%, -` or `mg per mm of pin setting`: remarks, symbols and bases are left away. */
export function unitsIn(text) {
  return String(text)
    .replace(/\([^)]*\)|\bw\/w\b|\bv\/v\b| of .*/g, '')
    .split(',')
    .map((part) => part.trim().replace(' per ', '/').split(/\s+/).at(-1));
}

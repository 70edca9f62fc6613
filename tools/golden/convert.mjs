import { EQUATIONS, lower } from './equations.mjs';
import { SETS } from './statistics.mjs';
import { factor, scaled, unitOfKey, unitsIn } from './units.mjs';

const plain = (text) => String(text).trim().replace(/\s+/g, ' ');
const RULES = new Map(Object.entries(EQUATIONS).map(([equation, rule]) => [plain(equation), rule]));

/** Why a case has to stay out. */
class LeftOut extends Error {}

/** Turns a reference file (a list with topic and equation, or a set of statistics) into check cases; lists what it leaves out. */
export function convert(file) {
  const list = Array.isArray(file) ? file : file?.cases;
  if (!Array.isArray(list)) throw new TypeError('neither a list of cases nor an object with a list as "cases"');
  const [cases, leftOut, ids] = [[], [], new Set()];
  for (const [index, given] of list.entries()) {
    try {
      cases.push(...converted(given, file.set, ids));
    } catch (error) {
      if (!(error instanceof LeftOut)) throw error;
      leftOut.push({ id: given?.id ?? `case ${index}`, group: given?.topic ?? file.set ?? '', why: error.message });
    }
  }
  return { cases, leftOut, total: list.length };
}

function converted(given, set, ids) {
  if (typeof given?.id !== 'string' || given.id === '') throw new LeftOut('has no id');
  if (ids.has(given.id)) throw new LeftOut('its id is used twice');
  ids.add(given.id);
  return 'equation' in given ? [fromEquation(given)] : fromSet(given, set);
}

function fromSet(given, set) {
  const found = SETS.get(set)?.(given) ?? [];
  if (found.length === 0) throw new LeftOut(`no method for this case of the set "${set ?? 'none'}"`);
  return found.map(({ part, method, inputs, expected, tolerance = given.tolerance ?? {} }) => {
    const id = part === undefined ? given.id : `${given.id}.${part}`;
    return { id, group: set, method, inputs, expected, tolerance, source: sourceOf(given) };
  });
}

function fromEquation(given) {
  const rule = RULES.get(plain(given.equation));
  if (!rule) throw new LeftOut(`no method for the equation "${plain(given.equation)}"`);
  const by = scales(rule, given);
  return {
    id: given.id,
    group: given.topic,
    method: rule.method,
    inputs: inputsOf(rule, given.inputs ?? {}),
    expected: expectedOf(rule, lower(given.expected), by),
    tolerance: toleranceOf(rule, given.tolerance ?? {}, by),
    source: sourceOf(given),
  };
}

/** The inputs under the keys of the method, in its units, single values as lists where it takes lists. */
function inputsOf(rule, raw) {
  const unitNames = Object.keys(rule.inUnitOf ?? {});
  const idle = ['size', ...unitNames, ...(rule.idle ?? [])];
  const inputs = {};
  for (const [name, value] of Object.entries(raw)) {
    const key = rule.inputs[name];
    if (key) inputs[key] = rule.read?.[name] ? rule.read[name](value) : value;
    else if (!idle.includes(name)) throw new LeftOut(`input "${name}" is not known`);
  }
  for (const name of unitNames.filter((unit) => raw[unit] !== undefined))
    for (const key of rule.inUnitOf[name]) inputs[key] = scaled(inputs[key], needed(raw[name], unitOfKey(key)));
  return rule.lists ? { ...inputs, ...asLists(rule.lists, inputs) } : inputs;
}

/** A single value stands for every member of the lists beside it. */
function asLists(keys, inputs) {
  const own = Object.entries(inputs).filter(([key]) => keys.includes(key));
  const length = Math.max(1, ...own.map(([, value]) => (Array.isArray(value) ? value.length : 1)));
  return Object.fromEntries(own.map(([key, value]) => [key, Array.isArray(value) ? value : Array(length).fill(value)]));
}

/** Factor from the units of the case to the unit of each output; a text has none. */
function scales(rule, given) {
  const units = unitsIn(given.unit);
  return rule.outputs.map((key, i) => (key.includes('_') ? needed(units[i] ?? units.at(-1), unitOfKey(key)) : 1));
}

function needed(from, to) {
  const by = factor(from, to);
  if (by === undefined) throw new LeftOut(`unit "${from}" cannot be turned into ${to}`);
  return by;
}

/** One output: its value; several: values by key. */
function expectedOf(rule, expected, by) {
  const [key] = rule.outputs;
  if (rule.outputs.length === 1) {
    const value = scaled(rule.lists?.includes(key) && !Array.isArray(expected) ? [expected] : expected, by[0]);
    return rule.isOneOfMany ? { [key]: value } : value;
  }
  if (!Array.isArray(expected) || expected.length === 0 || expected.length > rule.outputs.length)
    throw new LeftOut(`expected is not a list of ${rule.outputs.length} values`);
  return Object.fromEntries(expected.map((value, i) => [rule.outputs[i], scaled(value, by[i])]));
}

function toleranceOf(rule, tolerance, by) {
  const unknown = Object.keys(tolerance).find((key) => key !== 'abs' && key !== 'rel');
  if (unknown) throw new LeftOut(`tolerance "${unknown}" is not known`);
  const { abs, ...rel } = tolerance;
  if (abs === undefined) return rel;
  if (by.every((one) => one === by[0])) return { abs: scaled(abs, by[0]), ...rel };
  return { ...rel, fields: Object.fromEntries(rule.outputs.map((key, i) => [key, { abs: scaled(abs, by[i]) }])) };
}

function sourceOf({ source = '', fromMemory = false, kind }) {
  const memory = fromMemory && !/from memory/.test(source) ? ' (from memory)' : '';
  return plain(`${source}${memory}${kind ? ` [${kind}]` : ''}`);
}

import { allowedRange } from './allowed-range.ts';
import type { ChoiceField, Field, NumberField } from './field.ts';
import type { InputFault } from './input-fault.ts';
import { nearestName } from './nearest-name.ts';

/**
 * Checks raw values against the fields that describe them, and lists everything that is wrong at once.
 *
 * @param fields - the description
 * @param raw - the values by key, of any origin
 * @param path - prefix for the field names in the faults
 * @returns the faults; empty when the values fit
 * @throws nothing
 * @source none: bookkeeping
 */
export function checkValues(fields: readonly Field[], raw: Readonly<Record<string, unknown>>, path = ''): InputFault[] {
  const faults: InputFault[] = [];
  const keys = fields.map((field) => field.key);
  for (const key of Object.keys(raw))
    if (!keys.includes(key)) faults.push({ code: 'unknown-field', field: path + key, ...nearest(key, keys) });
  for (const field of fields) {
    const value = raw[field.key];
    if (value === undefined) {
      if (!field.optional) faults.push({ code: 'missing', field: path + field.key, allowed: wanted(field) });
    } else faults.push(...(field.list ? checkList(field, value, path) : checkScalar(field, value, path + field.key)));
  }
  return faults;
}

function checkList(field: Field, value: unknown, path: string): InputFault[] {
  const name = path + field.key;
  if (!Array.isArray(value)) return [{ code: 'wrong-kind', field: name, value: shown(value), allowed: 'a list' }];
  const { min, max } = field.list ?? { min: 0, max: 0 };
  if (value.length < min || value.length > max)
    return [{ code: 'wrong-length', field: name, value: String(value.length), allowed: `${min} to ${max} values` }];
  return value.flatMap((item: unknown, i) => checkScalar(field, item, `${name}.${i}`));
}

function checkScalar(field: Field, value: unknown, name: string): InputFault[] {
  switch (field.kind) {
    case 'number':
    case 'integer':
      return checkNumber(field, value, name);
    case 'choice':
      return checkChoice(field, value, name);
    case 'group':
      return typeof value === 'object' && value !== null && !Array.isArray(value)
        ? checkValues(field.fields, value as Record<string, unknown>, `${name}.`)
        : [{ code: 'wrong-kind', field: name, value: shown(value), allowed: wanted(field) }];
    case 'flag':
    case 'text': {
      const kind = field.kind === 'flag' ? 'boolean' : 'string';
      return typeof value === kind
        ? []
        : [{ code: 'wrong-kind', field: name, value: shown(value), allowed: wanted(field) }];
    }
  }
}

function checkNumber(field: NumberField, value: unknown, name: string): InputFault[] {
  const allowed = allowedRange(field);
  if (typeof value !== 'number') return [{ code: 'wrong-kind', field: name, value: shown(value), allowed }];
  if (!Number.isFinite(value)) return [{ code: 'not-finite', field: name, value: shown(value), allowed }];
  if (field.kind === 'integer' && !Number.isInteger(value))
    return [{ code: 'wrong-kind', field: name, value: shown(value), allowed: `a whole number, ${allowed}` }];
  return isInside(value, field) ? [] : [{ code: 'out-of-range', field: name, value: shown(value), allowed }];
}

function isInside(value: number, { min, max, above, below }: NumberField): boolean {
  const isLow = (min !== undefined && value < min) || (above !== undefined && value <= above);
  const isHigh = (max !== undefined && value > max) || (below !== undefined && value >= below);
  return !isLow && !isHigh;
}

function checkChoice(field: ChoiceField, value: unknown, name: string): InputFault[] {
  if (typeof value === 'string' && field.choices.includes(value)) return [];
  const near = typeof value === 'string' ? nearest(value, field.choices) : {};
  return [{ code: 'not-a-choice', field: name, value: shown(value), allowed: field.choices.join(', '), ...near }];
}

function wanted(field: Field): string {
  switch (field.kind) {
    case 'number':
    case 'integer':
      return allowedRange(field);
    case 'choice':
      return field.choices.join(', ');
    case 'flag':
      return 'true or false';
    case 'text':
      return 'text';
    case 'group':
      return field.fields.map((inner) => inner.key).join(', ');
  }
}

function nearest(name: string, known: readonly string[]): { nearest: string } | object {
  const found = nearestName(name, known);
  return found === undefined ? {} : { nearest: found };
}

function shown(value: unknown): string {
  return typeof value === 'string' ? value : JSON.stringify(value, jsonSafe).slice(0, 80);
}

/** NaN and the infinities as words: JSON would print null. */
function jsonSafe(_key: string, value: unknown): unknown {
  return typeof value === 'number' && !Number.isFinite(value) ? String(value) : value;
}

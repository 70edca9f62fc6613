import { nearestName, type CheckCase, type InputFault } from '@fillwright/engine/catalogue';
import { z } from 'zod';
import { checkCaseSchema } from './check-case-schema.ts';

/** The cases of a file, or everything that is wrong with it. */
export type ParsedCheckCases =
  | { readonly ok: true; readonly cases: readonly CheckCase[] }
  | { readonly ok: false; readonly faults: readonly InputFault[] };

const NUMBER = 'a number, at least 0';
const KEYS = Object.keys(checkCaseSchema.shape);

/**
 * Reads check cases from parsed JSON: a list of cases, or an object with the list as `cases`.
 *
 * @param raw - parsed JSON of any shape
 * @returns the cases, or one fault for each thing that is wrong, under `cases.<index from 0>.<field>`
 * @throws nothing
 * @source none: bookkeeping
 */
export function parseCheckCases(raw: unknown): ParsedCheckCases {
  const file = Array.isArray(raw) ? { cases: raw as unknown[] } : raw;
  const parsed = z.strictObject({ cases: z.array(checkCaseSchema) }).safeParse(file);
  const faults = parsed.success
    ? repeatedIds(parsed.data.cases)
    : parsed.error.issues.flatMap((issue) => faultsOf(issue, file));
  return parsed.success && faults.length === 0 ? { ok: true, cases: parsed.data.cases } : { ok: false, faults };
}

function faultsOf(issue: z.core.$ZodIssue, file: unknown): InputFault[] {
  const field = issue.path.map(String).join('.') || 'cases';
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => {
      const nearest = nearestName(key, issue.path.length > 1 ? KEYS : ['cases']);
      const path = [...issue.path.map(String), key].join('.');
      return { code: 'unknown-field', field: path, ...(nearest === undefined ? {} : { nearest }) };
    });
  const value = valueAt(file, issue.path);
  const allowed = allowedAt(issue.path);
  if (value === undefined) return [{ code: 'missing', field, allowed }];
  return [{ code: allowed === NUMBER ? 'out-of-range' : 'wrong-kind', field, value: shown(value), allowed }];
}

function shown(value: unknown): string {
  return typeof value === 'string' || typeof value === 'number' ? String(value) : JSON.stringify(value).slice(0, 80);
}

function valueAt(file: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((value, key) => (value as Record<PropertyKey, unknown> | undefined)?.[key], file);
}

/** What the form asks for at a place, in words. */
function allowedAt(path: readonly PropertyKey[]): string {
  switch (path[2]) {
    case undefined:
      return path.length === 2 ? `a case with ${KEYS.join(', ')}` : 'a list of cases, or {"cases": a list of cases}';
    case 'inputs':
      return 'an object with values by the keys of the method';
    case 'expected':
      return 'a finite value, or an object with values by output key';
    case 'tolerance':
      return path.length === 3 || path.at(-1) === 'fields' || path.at(-2) === 'fields'
        ? 'an object with abs, rel, fields'
        : NUMBER;
    default:
      return 'a text that is not empty';
  }
}

function repeatedIds(cases: readonly CheckCase[]): InputFault[] {
  const first = new Map<string, number>();
  return cases.flatMap(({ id }, index): InputFault[] => {
    const earlier = first.get(id);
    if (earlier === undefined) {
      first.set(id, index);
      return [];
    }
    return [
      { code: 'conflict', field: `cases.${index}.id`, value: id, rule: 'id-already-used', facts: { case: earlier } },
    ];
  });
}

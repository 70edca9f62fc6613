import type { CaseResult, CheckCase, Tolerance } from './check-case.ts';
import { computeEntry } from './compute-entry.ts';
import { DomainError, type Facts } from './domain-error.ts';
import type { Entry } from './entry.ts';

/**
 * Recomputes one check case: pass when every number lies within max(abs, rel |expected|) of the expected one and
 * everything else is equal. What cannot be computed is `cannot-tell`, never `pass`.
 *
 * @param check - the case
 * @param find - looks up a catalogue entry by id
 * @returns expected, got, deviation and verdict
 * @throws nothing: a refusal becomes `cannot-tell` with its reason
 * @source pass rule of the reference fixtures: |got - expected| <= max(abs, rel |expected|), number by number
 */
export function judgeCase(check: CheckCase, find: (id: string) => Entry | undefined): CaseResult {
  const { id, group, method, source, expected, tolerance } = check;
  const cannotTell = (code: string, facts: Facts): CaseResult => ({
    ...{ id, group, method, source, expected, got: null, deviation: null, tolerance },
    verdict: 'cannot-tell',
    reason: { code, facts },
  });
  const entry = find(method);
  if (!entry) return cannotTell('unknown-method', { method });
  try {
    const computed = computeEntry(entry, check.inputs);
    if (!computed.ok)
      return cannotTell('invalid-input', { fields: computed.faults.map((fault) => `${fault.field}: ${fault.code}`) });
    const stray = isRecord(expected)
      ? Object.keys(expected).filter((key) => !entry.outputs.some((one) => one.key === key))
      : [];
    if (stray.length > 0) return cannotTell('invalid-input', { fields: stray.map((key) => `expected.${key}`) });
    const only = entry.outputs.length === 1 ? entry.outputs[0] : undefined;
    const got = only && !isRecord(expected) ? computed.outputs[only.key] : computed.outputs;
    const { agrees, deviation } = compare({ expected, got, tolerance });
    const verdict = agrees ? 'pass' : 'fail';
    return { id, group, method, source, expected, got: pick(expected, got), deviation, tolerance, verdict };
  } catch (error) {
    if (error instanceof DomainError) return cannotTell(error.code, error.facts);
    throw error;
  }
}

interface Comparison {
  readonly agrees: boolean;
  readonly deviation: number | null;
}

const DISAGREES: Comparison = { agrees: false, deviation: null };

/** NaN agrees with nothing. */
function compareNumbers(pair: { expected: number; got: number; tolerance: Tolerance }): Comparison {
  const { expected, got, tolerance } = pair;
  const deviation = Math.abs(got - expected);
  const allowed = Math.max(tolerance.abs ?? 0, (tolerance.rel ?? 0) * Math.abs(expected));
  return {
    agrees: Number.isFinite(expected) && deviation <= allowed,
    deviation: Number.isFinite(deviation) ? deviation : null,
  };
}

function compare(pair: { expected: unknown; got: unknown; tolerance: Tolerance }): Comparison {
  const { expected, got, tolerance } = pair;
  if (typeof expected === 'number')
    return typeof got === 'number' ? compareNumbers({ expected, got, tolerance }) : DISAGREES;
  if (Array.isArray(expected)) {
    if (!Array.isArray(got) || got.length !== expected.length) return DISAGREES;
    return together(expected.map((item: unknown, i) => compare({ expected: item, got: got[i] as unknown, tolerance })));
  }
  if (isRecord(expected)) {
    if (!isRecord(got)) return DISAGREES;
    return together(
      Object.entries(expected).map(([key, item]) =>
        compare({ expected: item, got: got[key], tolerance: tolerance.fields?.[key] ?? tolerance }),
      ),
    );
  }
  return { agrees: (got ?? null) === (expected ?? null), deviation: null };
}

function together(parts: readonly Comparison[]): Comparison {
  const deviations = parts.flatMap((part) => (part.deviation === null ? [] : [part.deviation]));
  return {
    agrees: parts.length > 0 && parts.every((part) => part.agrees),
    deviation: deviations.length === 0 ? null : Math.max(...deviations),
  };
}

/** Of many outputs only those that the case speaks of. */
function pick(expected: unknown, got: unknown): unknown {
  if (!isRecord(expected) || !isRecord(got)) return got ?? null;
  return Object.fromEntries(Object.keys(expected).map((key) => [key, got[key] ?? null]));
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

import type { Facts } from './domain-error.ts';

/** A number in the unit of the value it belongs to. */
type InUnitOfValue = number;

/** An absolute tolerance in the unit of the value, or a relative one; the larger of both counts. */
export interface Tolerance {
  readonly abs?: number;
  readonly rel?: number;
  readonly fields?: Readonly<Record<string, { readonly abs?: number; readonly rel?: number }>>;
}

/** A check value with its source: what a computation must give for these inputs. */
export interface CheckCase {
  readonly id: string;
  readonly group: string;
  /** Id of the catalogue entry. */
  readonly method: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  /** The value of an entry with one output, or values by output key. */
  readonly expected: unknown;
  readonly tolerance: Tolerance;
  readonly source: string;
}

export type CaseVerdict = 'pass' | 'fail' | 'cannot-tell' | 'disputed';

/** What came out of a check case. */
export interface CaseResult {
  readonly id: string;
  readonly group: string;
  readonly method: string;
  readonly source: string;
  readonly expected: unknown;
  /** The computed value; null when nothing could be computed. */
  readonly got: unknown;
  /** Largest |got - expected| over the numbers, in the unit of the value; null when there is none. */
  readonly deviation: InUnitOfValue | null;
  readonly tolerance: Tolerance;
  readonly verdict: CaseVerdict;
  /** Why it cannot be told. */
  readonly reason?: { readonly code: string; readonly facts: Facts };
}

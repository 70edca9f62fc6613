import type { AuditFindingCode } from '@fillwright/words/en';

/** One thing that an audit found. */
export interface Finding {
  readonly code: AuditFindingCode;
  /** The document it concerns: site, kind and id, parted by slashes. */
  readonly document?: string;
  readonly facts: Readonly<Record<string, string | number>>;
}

/** What an audit says. It never passes on nothing: an empty store, or a lost list of heads, give `cannot-tell`. */
export interface Audit {
  readonly verdict: 'pass' | 'fail' | 'cannot-tell';
  readonly versionCount: number;
  readonly chainCount: number;
  readonly findings: readonly Finding[];
}

import { auditSentence, STORE_WORDS } from '@fillwright/words/en';
import type { Audit } from './usecases/audit-store.ts';

const MOST_FINDINGS = 50;

/**
 * What an audit found, one line each.
 *
 * @param audit - the audit, which did not pass
 * @param last - what it means, as the last line
 * @returns the lines
 */
export function auditText({ findings }: Audit, last: string): string {
  const more = findings.length - MOST_FINDINGS;
  return [
    ...findings.slice(0, MOST_FINDINGS).map(auditSentence),
    ...(more > 0 ? [STORE_WORDS.more(more)] : []),
    last,
  ].join('\n');
}

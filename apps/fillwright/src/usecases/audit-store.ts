import type { Audit } from '../store/finding.ts';
import type { Store } from '../store/store.ts';
import { verifyChains } from '../store/verify-chains.ts';

export type { Audit } from '../store/finding.ts';

/**
 * Verifies all that is kept.
 *
 * @param store - the store
 * @returns verdict, counts and findings
 */
export async function auditStore(store: Store): Promise<Audit> {
  return verifyChains(store);
}

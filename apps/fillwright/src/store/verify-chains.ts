import { chainCheck } from './chain-check.ts';
import { eachVersion } from './each-version.ts';
import type { Audit, Finding } from './finding.ts';
import type { HeadList, HeadNote } from './heads-log.ts';
import type { Store } from './store.ts';

/**
 * Verifies all that is kept: every hash, the order, every link, the heads in the database and in the list beside it.
 *
 * @param store - the store
 * @returns what was found, and the verdict
 * @throws StoreError when the store cannot be read
 */
export async function verifyChains(store: Store): Promise<Audit> {
  // The list first: what it names was in the database before.
  const list = await store.headsLog.read();
  const check = chainCheck(list.notes);
  await store.db.tx(async (tx) => {
    await tx.query('set transaction isolation level repeatable read');
    await eachVersion(tx, check.version);
    const heads = await tx.query<HeadNote>(
      'select site, kind, id, version, sha256 from fillwright.head order by site, kind, id',
    );
    for (const head of heads) check.head(head);
  });
  const { findings, versionCount, chainCount } = check.result();
  const doubts: Finding[] = findings.length > 0 ? [] : doubtsOf(list, versionCount);
  return {
    verdict: findings.length > 0 ? 'fail' : doubts.length > 0 ? 'cannot-tell' : 'pass',
    ...{ versionCount, chainCount },
    findings: [...findings, ...doubts],
  };
}

function doubtsOf({ isWhole, garbledLines }: HeadList, versionCount: number): Finding[] {
  return [
    ...(isWhole ? [] : [{ code: 'list-late', facts: {} } as const]),
    ...garbledLines.map((line): Finding => ({ code: 'list-garbled', facts: { line } })),
    ...(versionCount > 0 ? [] : [{ code: 'no-versions', facts: {} } as const]),
  ];
}

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { ENGINES, startEngine, type Engine } from '../../fixtures/engine.ts';
import { appendVersion, type Appended, type SentVersion } from './append-version.ts';
import type { Chain } from './chain.ts';
import { documentHeads } from './document-heads.ts';
import { newestVersion } from './newest-version.ts';
import { oneVersion } from './one-version.ts';
import { openStore, type StoreSettings } from './open-store.ts';
import { readBackup } from './read-backup.ts';
import { restoreBackup } from './restore-backup.ts';
import type { Store } from './store.ts';
import { verifyChains } from './verify-chains.ts';
import { versionHash } from './version-hash.ts';
import { versionHeads } from './version-heads.ts';
import { writeBackup } from './write-backup.ts';

const AT = '2026-03-02T08:00:00.000Z';
let count = 0;

function newChain(): Chain {
  return { site: 'here', kind: 'brief', id: `product-${++count}` };
}

function draft(basedOn: number, text = `text ${basedOn + 1}`): SentVersion {
  return { basedOn, status: 'draft', text, by: 'ada', at: AT };
}

async function begun(store: Store, versionCount: number): Promise<Chain> {
  const chain = newChain();
  for (let basedOn = 0; basedOn < versionCount; basedOn++) {
    const appended = await appendVersion(store, chain, draft(basedOn));
    expect(appended.outcome).toBe('kept');
  }
  return chain;
}

describe.each(ENGINES)('the store, %s', (name) => {
  let engine: Engine;
  let settings: StoreSettings;
  let store: Store;
  beforeAll(async () => {
    engine = await startEngine(name);
    settings = await engine.fresh();
    store = await openStore(settings);
  });
  afterAll(async () => {
    await store.close();
    await engine.stop();
  });
  /** A store of its own, for what the others must not see. */
  const ownStore = async (): Promise<Store> => {
    const own = await openStore(await engine.fresh());
    onTestFinished(own.close);
    return own;
  };

  test('golden: a version is read as it was sent, by all ways', async () => {
    const chain = newChain();
    expect(await newestVersion(store, chain)).toBeUndefined();
    const text = 'format: 1\n# Gänsefuß "½" \\ 😀\r\n';
    const appended = await appendVersion(store, chain, { ...draft(0, text), reason: 'first trial' });
    const version = {
      ...{ kind: 'brief', id: chain.id, version: 1, status: 'draft', text, previous: null, by: 'ada', at: AT },
      ...{ reason: 'first trial', sha256: expect.stringMatching(/^[0-9a-f]{64}$/) as string },
    };
    expect(appended).toEqual({ outcome: 'kept', version });
    const { text: _, ...head } = version;
    expect(await newestVersion(store, chain)).toEqual(version);
    expect(await oneVersion(store, chain, 1)).toEqual(version);
    expect(await oneVersion(store, chain, 2)).toBeUndefined();
    expect(await versionHeads(store, chain)).toEqual([head]);
    expect(await documentHeads(store, chain)).toContainEqual(head);
  });

  test('property: whatever is appended, each version holds its own hash and that of the one before', async () => {
    const one = fc.record({
      text: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 200 }).filter((text) => !text.includes('\0')),
      status: fc.constantFrom('draft', 'saved'),
      reason: fc.constantFrom('new lot', 'better flow'),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(one, { minLength: 1, maxLength: 6 }), async (versions) => {
        const chain = newChain();
        for (const [basedOn, sent] of versions.entries())
          expect((await appendVersion(store, chain, { ...draft(basedOn), ...sent })).outcome).toBe('kept');
        let previous: string | null = null;
        for (const [i, sent] of versions.entries()) {
          const kept = await oneVersion(store, chain, i + 1);
          expect(kept).toMatchObject({ ...sent, previous });
          expect(kept && versionHash({ ...kept, site: 'here' })).toBe(kept?.sha256);
          previous = kept?.sha256 ?? null;
        }
      }),
      { numRuns: 20, seed: 4 },
    );
    expect(await verifyChains(store)).toMatchObject({ verdict: 'pass', findings: [] });
  });

  test('golden: of many writers on one base one is kept, the others get the version that was', async () => {
    const chain = await begun(store, 1);
    const sent = Array.from({ length: 12 }, (_, i) => appendVersion(store, chain, draft(1, `by writer ${i}`)));
    const outcomes = await Promise.all(sent);
    const kept = outcomes.filter((one): one is Extract<Appended, { outcome: 'kept' }> => one.outcome === 'kept');
    expect(kept).toHaveLength(1);
    for (const one of outcomes.filter(({ outcome }) => outcome !== 'kept'))
      expect(one).toEqual({ outcome: 'conflict', current: kept[0]?.version });
  });

  test('golden: of many writers of a first version one is kept', async () => {
    const chain = newChain();
    const sent = Array.from({ length: 12 }, (_, i) => appendVersion(store, chain, draft(0, `by writer ${i}`)));
    const outcomes = (await Promise.all(sent)).map(({ outcome }) => outcome).sort();
    expect(outcomes).toEqual([...Array<string>(11).fill('conflict'), 'kept']);
  });

  test('refuses: a version on an older base, on one that is not there yet, on a document that is not there', async () => {
    const chain = await begun(store, 2);
    const current = await newestVersion(store, chain);
    for (const basedOn of [0, 1, 3])
      expect(await appendVersion(store, chain, draft(basedOn, 'other'))).toEqual({ outcome: 'conflict', current });
    expect(await appendVersion(store, newChain(), draft(1))).toEqual({ outcome: 'conflict', current: undefined });
  });

  test('golden: what is sent twice is kept once', async () => {
    const chain = await begun(store, 1);
    const first = await appendVersion(store, chain, draft(1));
    expect(await appendVersion(store, chain, { ...draft(1), at: '2026-03-02T09:00:00.000Z' })).toEqual(first);
    expect(await versionHeads(store, chain)).toHaveLength(2);
  });

  test('golden: a reason is asked only when a saved version supersedes a saved one', async () => {
    const chain = newChain();
    const send = (sent: Partial<SentVersion> & { basedOn: number }): Promise<Appended> =>
      appendVersion(store, chain, { ...draft(sent.basedOn), ...sent });
    expect((await send({ basedOn: 0, status: 'saved' })).outcome).toBe('kept');
    expect((await send({ basedOn: 1 })).outcome).toBe('kept');
    expect(await send({ basedOn: 2, status: 'saved' })).toEqual({ outcome: 'reason-missing', supersedes: 1 });
    expect((await send({ basedOn: 2, status: 'saved', reason: 'new lot of blend' })).outcome).toBe('kept');
    expect((await send({ basedOn: 3 })).outcome).toBe('kept');
  });

  test('golden: documents are listed with the one changed last first, other kinds apart', async () => {
    const own = await ownStore();
    for (const [id, at] of [
      ['a', '2026-03-02T08:00:00.000Z'],
      ['b', '2026-03-04T08:00:00.000Z'],
      ['c', '2026-03-03T08:00:00.000Z'],
    ] as const)
      await appendVersion(own, { site: 'here', kind: 'brief', id }, { ...draft(0), at });
    await appendVersion(own, { site: 'here', kind: 'design', id: 'd' }, draft(0));
    expect((await documentHeads(own, { site: 'here', kind: 'brief' })).map(({ id }) => id)).toEqual(['b', 'c', 'a']);
  });

  test.each([
    ['a version changed', `update fillwright.document set text = 'x'`, /document is append-only: update refused/],
    ['a version removed', `delete from fillwright.document`, /document is append-only: delete refused/],
    ['all versions removed', `truncate fillwright.document`, /document is append-only: truncate refused/],
    ['a head removed', `delete from fillwright.head`, /head is append-only: delete refused/],
    ['all heads removed', `truncate fillwright.head`, /head is append-only: truncate refused/],
    ['a head set back', `update fillwright.head set version = version - 1`, /head only moves forward/],
    ['a head moved', `update fillwright.head set id = 'other', version = version + 1`, /head only moves forward/],
  ])('refuses: %s', async (_, statement, message) => {
    await begun(store, 1);
    await expect(store.db.query(statement)).rejects.toThrow(message);
    expect(await verifyChains(store)).toMatchObject({ verdict: 'pass' });
  });

  test('refuses: a transaction that fails leaves nothing behind', async () => {
    const work = store.db.tx(async (tx) => {
      await tx.query(
        `insert into fillwright.head (site, kind, id, version, sha256) values ('here', 'brief', 'half', 0, '')`,
      );
      throw new Error('in the middle');
    });
    await expect(work).rejects.toThrow('in the middle');
    expect(await store.db.query(`select 1 from fillwright.head where id = 'half'`)).toEqual([]);
  });

  describe('backup', () => {
    const folder = mkdtempSync(join(tmpdir(), 'backup-'));
    afterAll(() => {
      rmSync(folder, { recursive: true, force: true });
    });

    test('golden: what is restored from a backup is the same, and goes on', async () => {
      const [from, to] = [await ownStore(), await ownStore()];
      const chain = await begun(from, 3);
      await begun(from, 1);
      const file = join(folder, 'whole');
      await writeBackup(from, file, AT);
      const counts = { versionCount: 4, chainCount: 2 };
      expect(await readBackup(file)).toEqual({ verdict: 'pass', ...counts, findings: [] });
      expect(await restoreBackup(to, file)).toMatchObject({ verdict: 'pass', ...counts });
      expect(await oneVersion(to, chain, 2)).toEqual(await oneVersion(from, chain, 2));
      expect((await appendVersion(to, chain, draft(3))).outcome).toBe('kept');
      expect(await verifyChains(to)).toMatchObject({ verdict: 'pass', versionCount: 5 });
      await expect(restoreBackup(to, file)).rejects.toMatchObject({ code: 'not-empty', facts: { versionCount: 5 } });
    });

    test('refuses: a file that is there, a folder that is not', async () => {
      const file = join(folder, 'there');
      writeFileSync(file, 'mine');
      await expect(writeBackup(store, file, AT)).rejects.toMatchObject({ code: 'backup-exists' });
      expect(readFileSync(file, 'utf8')).toBe('mine');
      await expect(writeBackup(store, join(folder, 'none', 'x'), AT)).rejects.toMatchObject({
        code: 'backup-unwritable',
      });
    });
  });
});

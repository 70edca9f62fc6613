import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { ENGINES, startEngine, type Engine } from '../../fixtures/engine.ts';
import { appendVersion, type SentVersion } from './append-version.ts';
import type { Chain } from './chain.ts';
import type { Audit } from './finding.ts';
import { oneVersion } from './one-version.ts';
import { openStore } from './open-store.ts';
import type { Store } from './store.ts';
import { verifyChains } from './verify-chains.ts';
import { versionHash } from './version-hash.ts';

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

describe.each(ENGINES)('verifyChains, %s', (name) => {
  let engine: Engine;
  let store: Store;
  beforeAll(async () => {
    engine = await startEngine(name);
    store = await openStore(await engine.fresh());
    for (const table of ['document', 'head'])
      await store.db.query(`alter table fillwright.${table} disable trigger all`);
  });
  afterAll(async () => {
    await store.close();
    await engine.stop();
  });
  const ownStore = async (): Promise<Store> => {
    const own = await openStore(await engine.fresh());
    onTestFinished(own.close);
    return own;
  };

  /** Five versions in the store of all these tests, then a change as whoever owns the database can make it. */
  async function tampered(statement: string): Promise<{ findings: Audit['findings']; document: string }> {
    const { id } = await begun(store, 5);
    const document = `here/brief/${id}`;
    const before = await verifyChains(store);
    expect(before.findings.filter((finding) => finding.document === document)).toEqual([]);
    for (const each of statement.split(';')) await store.db.query(each.replaceAll('ALDER', `where id = '${id}'`));
    const { verdict, findings } = await verifyChains(store);
    expect(verdict).toBe('fail');
    // Nothing new is said of the other documents.
    const others = (audit: Pick<Audit, 'findings'>): unknown =>
      audit.findings.filter((one) => one.document !== document);
    expect(others({ findings })).toEqual(others(before));
    return { findings: findings.filter((finding) => finding.document === document), document };
  }
  test.each([
    [
      'a text changed',
      `update fillwright.document set text = 'other' ALDER and version = 3`,
      { code: 'changed', facts: { version: 3 } },
    ],
    [
      'a name changed',
      `update fillwright.document set by = 'eve' ALDER and version = 1`,
      { code: 'changed', facts: { version: 1 } },
    ],
    [
      'a time changed',
      `update fillwright.document set at = '2026-03-01T08:00:00.000Z' ALDER and version = 5`,
      { code: 'changed', facts: { version: 5 } },
    ],
    [
      'one in the middle removed',
      `delete from fillwright.document ALDER and version = 3`,
      { code: 'missing', facts: { from: 3, to: 3 } },
    ],
    [
      'the first ones removed',
      `delete from fillwright.document ALDER and version <= 2`,
      { code: 'missing', facts: { from: 1, to: 2 } },
    ],
    [
      'the last ones removed',
      `delete from fillwright.document ALDER and version >= 4`,
      { code: 'missing', facts: { from: 4, to: 5 } },
    ],
    [
      'the last one removed, and its head set back',
      `delete from fillwright.document ALDER and version = 5; update fillwright.head set version = 4,
       sha256 = (select sha256 from fillwright.document ALDER and version = 4) ALDER`,
      { code: 'missing', facts: { from: 5, to: 5 } },
    ],
    ['a head removed', `delete from fillwright.head ALDER`, { code: 'head-missing', facts: { version: 5 } }],
    [
      'a head changed',
      `update fillwright.head set sha256 = encode(sha256('x'), 'hex') ALDER`,
      { code: 'head-differs', facts: { version: 5 } },
    ],
    [
      'a status out of order',
      `alter table fillwright.document drop constraint document_status_check;
      update fillwright.document set status = 'final' ALDER and version = 2`,
      { code: 'unreadable', facts: { version: 2 } },
    ],
  ])('golden: the audit finds %s, and which', async (_, statement, finding) => {
    const { findings, document } = await tampered(statement);
    expect(findings).toContainEqual({
      document,
      ...finding,
      facts: expect.objectContaining(finding.facts) as object,
    });
  });

  test('golden: the audit finds a whole document that was removed', async () => {
    const { findings, document } = await tampered(
      `delete from fillwright.document ALDER; delete from fillwright.head ALDER`,
    );
    expect(findings).toHaveLength(5);
    expect(findings).toContainEqual({ code: 'missing', document, facts: { from: 5, to: 5 } });
  });

  test('golden: the audit finds two versions that were exchanged, and which', async () => {
    const { findings, document } = await tampered(
      [2, 4, 99]
        .map(
          (version, i) =>
            `update fillwright.document set version = ${[99, 2, 4][i] ?? 0} ALDER and version = ${version}`,
        )
        .join(';'),
    );
    for (const facts of [
      { version: 2, was: 4 },
      { version: 4, was: 2 },
    ])
      expect(findings).toContainEqual({ code: 'exchanged', document, facts });
  });

  test('golden: the audit finds a chain that was computed anew from a changed version on', async () => {
    const own = await ownStore();
    const chain = await begun(own, 4);
    await own.db.query('alter table fillwright.document disable trigger all');
    await own.db.query('alter table fillwright.head disable trigger all');
    let previous = (await oneVersion(own, chain, 1))?.sha256 ?? '';
    for (const version of [2, 3, 4]) {
      const kept = await oneVersion(own, chain, version);
      if (!kept) throw new Error('not there');
      const forged = { ...kept, text: version === 2 ? 'forged' : kept.text, previous, site: 'here' };
      previous = versionHash(forged);
      await own.db.query(
        'update fillwright.document set text = $1, previous = $2, sha256 = $3 where id = $4 and version = $5',
        [forged.text, forged.previous, previous, chain.id, version],
      );
    }
    await own.db.query('update fillwright.head set sha256 = $1 where id = $2', [previous, chain.id]);
    const { verdict, findings } = await verifyChains(own);
    expect(verdict).toBe('fail');
    expect(findings.map(({ code, facts }) => [code, facts['version']])).toEqual([
      ['list-differs', 2],
      ['list-differs', 3],
      ['list-differs', 4],
    ]);
  });

  test('golden: the audit finds a changed version also after it was sent once more, and so noted anew', async () => {
    const own = await ownStore();
    const chain = await begun(own, 1);
    await own.db.query('alter table fillwright.document disable trigger all');
    await own.db.query('alter table fillwright.head disable trigger all');
    const kept = await oneVersion(own, chain, 1);
    if (!kept) throw new Error('not there');
    const sha256 = versionHash({ ...kept, text: 'forged', site: 'here' });
    await own.db.query('update fillwright.document set text = $1, sha256 = $2 where id = $3', [
      'forged',
      sha256,
      chain.id,
    ]);
    await own.db.query('update fillwright.head set sha256 = $1 where id = $2', [sha256, chain.id]);
    expect(await appendVersion(own, chain, draft(0, 'forged'))).toMatchObject({
      outcome: 'kept',
      version: { version: 1 },
    });
    expect(await verifyChains(own)).toMatchObject({
      verdict: 'fail',
      findings: [{ code: 'list-differs', facts: { version: 1 } }],
    });
  });

  test('limit: whether versions are missing cannot be told once the list of heads is lost', async () => {
    const own = await engine.fresh();
    const first = await openStore(own);
    const chain = await begun(first, 2);
    await first.close();
    rmSync(join(own.dataFolder, 'heads.log'));
    const second = await openStore(own);
    onTestFinished(second.close);
    expect((await appendVersion(second, chain, draft(2))).outcome).toBe('kept');
    expect(await verifyChains(second)).toMatchObject({ verdict: 'cannot-tell', findings: [{ code: 'list-late' }] });
  });

  test('limit: an empty store cannot be told, nor one whose list of heads cannot be read', async () => {
    const own = await engine.fresh();
    const first = await openStore(own);
    expect(await verifyChains(first)).toEqual({
      ...{ verdict: 'cannot-tell', versionCount: 0, chainCount: 0 },
      findings: [{ code: 'no-versions', facts: {} }],
    });
    await begun(first, 1);
    await first.close();
    const list = join(own.dataFolder, 'heads.log');
    writeFileSync(list, `${readFileSync(list, 'utf8')}nonsense\n`);
    const second = await openStore(own);
    onTestFinished(second.close);
    expect(await verifyChains(second)).toMatchObject({
      verdict: 'cannot-tell',
      findings: [{ code: 'list-garbled', facts: { line: 3 } }],
    });
  });

  test('golden: a last line of the list that was cut off is taken away, and all goes on', async () => {
    const own = await engine.fresh();
    const first = await openStore(own);
    const chain = await begun(first, 1);
    await first.close();
    const list = join(own.dataFolder, 'heads.log');
    const whole = readFileSync(list, 'utf8');
    writeFileSync(list, `${whole}here brief pro`);
    const second = await openStore(own);
    onTestFinished(second.close);
    expect((await appendVersion(second, chain, draft(1))).outcome).toBe('kept');
    expect(readFileSync(list, 'utf8').startsWith(whole)).toBe(true);
    expect(await verifyChains(second)).toMatchObject({ verdict: 'pass', versionCount: 2 });
  });
});

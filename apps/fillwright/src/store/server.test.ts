import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { startEngine, type Engine } from '../../fixtures/engine.ts';
import { appendVersion, type Appended } from './append-version.ts';
import { MIGRATIONS } from './migrations.ts';
import { openStore } from './open-store.ts';
import type { Store } from './store.ts';
import { verifyChains } from './verify-chains.ts';

let engine: Engine;
beforeAll(async () => {
  engine = await startEngine('server');
});
afterAll(() => engine.stop());

function append(store: Store, basedOn: number): Promise<Appended> {
  const chain = { site: 'here', kind: 'brief', id: 'alder' } as const;
  const at = '2026-03-02T08:00:00.000Z';
  return appendVersion(store, chain, { basedOn, status: 'draft', text: `text ${basedOn}`, by: 'ada', at });
}

describe('openStore, server', () => {
  test('golden: of eight programs that start at once on an empty database each finds the tables', async () => {
    const settings = await engine.fresh();
    const stores = await Promise.all(Array.from({ length: 8 }, () => openStore(settings)));
    expect(await stores[0]?.db.query('select number from fillwright.migration order by 1')).toHaveLength(
      MIGRATIONS.length + 1,
    );
    // All of them write to one document: each goes on until its version is kept.
    const kept = stores.map(async (store) => {
      for (let basedOn = 0; ;) {
        const appended = await append(store, basedOn);
        if (appended.outcome === 'kept') return;
        if (appended.outcome === 'conflict') basedOn = appended.current?.version ?? 0;
      }
    });
    await Promise.all(kept);
    expect(await verifyChains(stores[0] as Store)).toMatchObject({ verdict: 'pass', chainCount: 1 });
    await Promise.all(stores.map(({ close }) => close()));
  });

  test('golden: a transaction that meets another one (40001) is run again', async () => {
    const store = await openStore(await engine.fresh());
    onTestFinished(store.close);
    await append(store, 0);
    await store.db.query('create table fillwright.counter (n integer)');
    await store.db.query('insert into fillwright.counter values (0)');
    const increase = (): Promise<unknown> =>
      store.db.tx(async (tx) => {
        await tx.query('set transaction isolation level serializable');
        const [row] = await tx.query<{ n: number }>('select n from fillwright.counter');
        await tx.query('update fillwright.counter set n = $1', [(row?.n ?? 0) + 1]);
      });
    await Promise.all(Array.from({ length: 4 }, increase));
    expect(await store.db.query('select n from fillwright.counter')).toEqual([{ n: 4 }]);
  });

  test('golden: a bigint is a number, as on the embedded engine', async () => {
    const store = await openStore(await engine.fresh());
    onTestFinished(store.close);
    expect(await store.db.query('select count(*) as n from fillwright.head')).toEqual([{ n: 0 }]);
  });

  test('golden: when the server went away and came back, the program goes on', async () => {
    const store = await openStore(await engine.fresh());
    onTestFinished(store.close);
    await append(store, 0);
    // Under way, lent but idle, and idle in the pool: none of them may end the program.
    const underWay = expect(store.db.tx((tx) => tx.query('select pg_sleep(60)'))).rejects.toMatchObject({
      code: 'unreachable',
    });
    let goOn = (): void => undefined;
    const wait = new Promise<void>((resolve) => (goOn = resolve));
    const lent = expect(store.db.tx(() => wait)).rejects.toMatchObject({ code: 'unreachable' });
    await Promise.all([store.db.query('select 1'), store.db.query('select 1')]);
    await engine.kill();
    goOn();
    await Promise.all([underWay, lent]);
    const again = await append(store, 1).catch(() => append(store, 1));
    expect(again).toMatchObject({ outcome: 'kept', version: { version: 2 } });
  });

  test('refuses: a data folder that is not its own', async () => {
    const settings = await engine.fresh();
    const { dataFolder } = settings;
    mkdirSync(join(dataFolder, 'store'), { recursive: true });
    await expect(openStore(settings)).rejects.toMatchObject({ code: 'foreign' });
    writeFileSync(join(dataFolder, 'heads.log'), '');
    await expect(openStore(settings)).rejects.toMatchObject({ code: 'two-stores' });
    expect([readdirSync(dataFolder), readFileSync(join(dataFolder, 'heads.log'), 'utf8')]).toEqual([
      ['heads.log', 'store'],
      '',
    ]);
  });

  test('refuses: a schema of another program, and leaves it alone', async () => {
    const settings = await engine.fresh();
    const client = new pg.Client(settings.databaseUrl);
    await client.connect();
    onTestFinished(() => client.end());
    await client.query('create schema fillwright; create table fillwright.letters (n integer)');
    await expect(openStore(settings)).rejects.toMatchObject({ code: 'foreign' });
    const { rows } = await client.query(
      `select table_name from information_schema.tables where table_schema = 'fillwright'`,
    );
    expect(rows).toEqual([{ table_name: 'letters' }]);
  });

  test('refuses: a store of a newer program, and no store where none is to be made', async () => {
    const settings = await engine.fresh();
    await expect(openStore({ ...settings, isToBeMade: false })).rejects.toMatchObject({ code: 'no-store' });
    const store = await openStore(settings);
    await store.db.query('insert into fillwright.migration values (99, now())');
    await store.close();
    await expect(openStore(settings)).rejects.toMatchObject({ code: 'newer', facts: { found: 99 } });
  });

  test('refuses: a user without the right to write', async () => {
    const settings = await engine.fresh();
    await (await openStore(settings)).close();
    const url = new URL(settings.databaseUrl ?? '');
    const client = new pg.Client(url.href);
    await client.connect();
    onTestFinished(() => client.end());
    await client.query(
      `create role reader login password 'secret-word'; grant usage on schema fillwright to reader;
       grant select on all tables in schema fillwright to reader`,
    );
    url.username = 'reader';
    url.password = 'secret-word';
    const store = await openStore({ ...settings, databaseUrl: url.href });
    onTestFinished(store.close);
    await expect(append(store, 0)).rejects.toMatchObject({ code: 'read-only' });
  });

  test('refuses: what is no address, nobody there, a wrong password; none of them tells the password', async () => {
    const settings = await engine.fresh();
    const url = new URL(settings.databaseUrl ?? '');
    const wrong = new URL(url);
    wrong.password = 'secret-word';
    const nobody = new URL(wrong);
    nobody.port = '1';
    for (const databaseUrl of ['secret-word', wrong.href, nobody.href, 'mysql://u:secret-word@h/d']) {
      const trouble: unknown = await openStore({ ...settings, databaseUrl }).catch((error: unknown) => error);
      expect(trouble).toMatchObject({ code: 'unreachable' });
      expect(JSON.stringify(trouble) + String(trouble)).not.toContain('secret-word');
    }
  });
});

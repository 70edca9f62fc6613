import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { startEngine, type Engine } from '../../fixtures/engine.ts';
import { appendVersion } from './append-version.ts';
import type { Chain } from './chain.ts';
import { MIGRATIONS } from './migrations.ts';
import { openStore, type StoreSettings } from './open-store.ts';
import type { Store } from './store.ts';

const CHAIN: Chain = { site: 'here', kind: 'brief', id: 'alder' };
let engine: Engine;
beforeAll(async () => {
  engine = await startEngine('embedded');
});
afterAll(() => engine.stop());

async function opened(settings: StoreSettings): Promise<Store> {
  const store = await openStore(settings);
  onTestFinished(store.close);
  return store;
}

async function append(store: Store, basedOn: number): Promise<void> {
  const sent = {
    basedOn,
    status: 'draft',
    text: `text ${basedOn}`,
    by: 'ada',
    at: '2026-03-02T08:00:00.000Z',
  } as const;
  expect((await appendVersion(store, CHAIN, sent)).outcome).toBe('kept');
}

describe('migrate', () => {
  const more = { number: 2, statements: ['create table fillwright.later (n integer primary key)'] };

  test('golden: before each step beyond the first the store is kept as it was', async () => {
    const settings = await engine.fresh();
    const first = await openStore(settings);
    await append(first, 0);
    await first.close();
    const store = await opened({ ...settings, migrations: [...MIGRATIONS, more] });
    expect(await store.db.query('select * from fillwright.later')).toEqual([]);
    const backups = join(settings.dataFolder, 'backups');
    expect(readdirSync(backups)).toEqual(['before-migration-0002.tar.gz']);
    // Taken out by another program (tar), it opens in the form before and holds what was kept.
    const old = await engine.fresh();
    rmSync(join(old.dataFolder, 'store'), { recursive: true });
    mkdirSync(join(old.dataFolder, 'store'));
    const from = join(backups, 'before-migration-0002.tar.gz');
    expect(spawnSync('tar', ['-xzf', from, '-C', join(old.dataFolder, 'store')]).status).toBe(0);
    const restored = await opened(old);
    expect(await restored.db.query('select id, version from fillwright.head')).toEqual([{ id: 'alder', version: 1 }]);
  });

  test('refuses: a store of a later step, and leaves it alone', async () => {
    const settings = await engine.fresh();
    await (await openStore({ ...settings, migrations: [...MIGRATIONS, more] })).close();
    await expect(openStore(settings)).rejects.toMatchObject({ code: 'newer', facts: { found: 2, known: 1 } });
    await (await openStore({ ...settings, migrations: [...MIGRATIONS, more] })).close();
  });

  test('refuses: a step that fails leaves the store in the form before', async () => {
    const settings = await engine.fresh();
    const broken = { number: 2, statements: [...more.statements, 'create table nonsense'] };
    await expect(openStore({ ...settings, migrations: [...MIGRATIONS, broken] })).rejects.toThrow('syntax error');
    await append(await opened(settings), 0);
  });
});

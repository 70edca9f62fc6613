import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startEngine, type Engine } from '../../fixtures/engine.ts';
import { openStore } from '../store/open-store.ts';
import { saveVersion } from '../usecases/save-version.ts';

const PROGRAM = fileURLToPath(new URL('../../bin/fillwright.mjs', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'audit-'));
let engine: Engine;
let data: string;
beforeAll(async () => {
  engine = await startEngine('embedded');
  const settings = await engine.fresh();
  data = settings.dataFolder;
  const store = await openStore(settings);
  for (const basedOn of [0, 1, 2]) {
    const sent = {
      basedOn,
      status: 'draft',
      text: `text ${basedOn}`,
      by: 'ada',
      at: '2026-03-02T08:00:00.000Z',
    } as const;
    await saveVersion(store, { kind: 'brief', id: 'alder' }, sent);
  }
  for (const kind of ['filler', 'shell'] as const) {
    const at = '2026-03-02T08:00:00.000Z';
    await saveVersion(store, { kind, id: 'alder' }, { basedOn: 0, status: 'draft', text: kind, by: 'ada', at });
  }
  await store.close();
  run(data, 'backup', backup('whole'));
});
afterAll(async () => {
  await engine.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** Runs the built program on a store as a person does. */
function run(store: string, ...args: string[]): { status: number | null; stdout: string; stderr: string } {
  const env = { ...process.env, FILLWRIGHT_DATA: store, DATABASE_URL: '' };
  const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, ...args], { encoding: 'utf8', env });
  return { status, stdout, stderr };
}
const backup = (name: string): string => join(folder, name);

describe('fillwright audit, backup, restore', () => {
  test('golden: a sound store of every kind of file passes; its backup is written, checked and restored', () => {
    expect(run(data, 'audit', 'verify')).toMatchObject({ status: 0, stderr: '' });
    expect(JSON.parse(run(data, 'audit', 'verify', '--json').stdout)).toEqual({
      ...{ verdict: 'pass', versionCount: 5, chainCount: 3, findings: [] },
    });
    const file = backup('sound');
    expect(run(data, 'backup', file)).toMatchObject({ status: 0, stderr: '' });
    expect(run(join(folder, 'none'), 'restore', '--check', file)).toMatchObject({ status: 0, stderr: '' });
    expect(run(join(folder, 'restored'), 'restore', file)).toMatchObject({ status: 0, stderr: '' });
    expect(run(join(folder, 'restored'), 'audit', 'verify').stdout).toContain('5 versions of 3 documents verified');
    expect(run(data, 'backup', file)).toMatchObject({ status: 3, stdout: '' });
  });

  test.each<[string, (text: string) => string, string]>([
    ['a changed text', (text) => text.replace('text 1', 'text 9'), 'version 2 was changed'],
    ['a missing line', (text) => text.split('\n').toSpliced(2, 1).join('\n'), 'version 2 is missing'],
    ['a missing last version', (text) => text.split('\n').toSpliced(3, 1).join('\n'), 'version 3 is missing'],
    [
      'exchanged lines',
      (text) => {
        const [a = '', b = '', c = '', ...more] = text.split('\n');
        return [a, c, b, ...more].join('\n');
      },
      'version 2',
    ],
    ['a missing end', (text) => text.split('\n').slice(0, -2).join('\n'), 'the end of the backup is missing'],
    ['a line too many', (text) => `${text}{}\n`, 'changed after it was written'],
    ['a garbled line', (text) => text.replace('"version":3', 'version'), 'line 4 of the backup cannot be read'],
  ])('refuses: a backup with %s -> 1, and makes no store of it', (name, change, sentence) => {
    const whole = backup('whole');
    const file = backup(name);
    writeFileSync(file, change(readFileSync(whole, 'utf8')));
    const checked = run(data, 'restore', '--check', file);
    expect([checked.status, checked.stdout]).toEqual([1, '']);
    expect(checked.stderr).toContain(sentence);
    const store = join(folder, `of ${name}`);
    expect(run(store, 'restore', file).status).toBe(1);
    expect(existsSync(store)).toBe(false);
  });

  test.each<[string, string[], number, string]>([
    ['no verb', ['audit'], 2, 'fillwright audit verify'],
    ['an unknown flag', ['audit', 'verify', '--jsn'], 2, 'the nearest is --json'],
    ['no file to write', ['backup'], 2, 'Name the file'],
    ['no file to read', ['restore', '--check'], 2, 'Name the file'],
    ['a word too many', ['backup', 'a', 'b'], 2, '"b" is not expected'],
    ['a backup that is not there', ['restore', '--check', 'nowhere'], 3, 'cannot be read'],
    ['something that is no backup', ['restore', '--check', PROGRAM], 3, 'its first line'],
    ['a store that is not empty', ['restore', backup('whole')], 3, 'already holds 5 versions'],
  ])('refuses: %s', (...[, args, code, sentence]) => {
    const { status, stdout, stderr } = run(data, ...args);
    expect([status, stdout]).toEqual([code, '']);
    expect(stderr).toContain(sentence);
  });
});

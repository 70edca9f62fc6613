import { spawnSync } from 'node:child_process';
import { appendFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'generate-'));

function generate(...args: string[]): { status: number | null; stderr: string } {
  return spawnSync(process.execPath, [resolve('tools/generate.mjs'), ...args], { cwd: folder, encoding: 'utf8' });
}

test('golden: a page for each room with every method and an index; made again it is the same', () => {
  expect(generate()).toMatchObject({ status: 0 });
  const page = readFileSync(join(folder, 'docs/methods/quantity.md'), 'utf8');
  for (const part of [
    '## `quantity.kilogram-force`',
    '`force_kgf`',
    'Validity',
    'Rests on',
    'Check values',
    'from memory',
  ])
    expect(page).toContain(part);
  expect(readFileSync(join(folder, 'docs/methods/index.md'), 'utf8')).toContain('quantity.md#quantitykilogram-force');
  expect(generate('--check')).toMatchObject({ status: 0, stderr: '' });
});

test('refuses: --check names a file that stands alone when it was edited or is missing', () => {
  const file = join(folder, 'docs/openapi.json');
  appendFileSync(file, 'x');
  expect(generate('--check')).toMatchObject({
    status: 1,
    stderr: expect.stringContaining('docs/openapi.json') as string,
  });
  rmSync(file);
  expect(generate('--check')).toMatchObject({
    status: 1,
    stderr: expect.stringContaining('docs/openapi.json') as string,
  });
  expect(generate()).toMatchObject({ status: 0 });
  expect(JSON.parse(readFileSync(file, 'utf8'))).toMatchObject({ openapi: '3.1.0' });
});

test('refuses: --check names a page that was edited, is missing or is too many, and mends nothing', () => {
  const [edited, missing, extra] = ['index.md', 'shells.md', 'old.md'].map((name) => join('docs/methods', name));
  appendFileSync(join(folder, String(edited)), 'x');
  rmSync(join(folder, String(missing)));
  writeFileSync(join(folder, String(extra)), '');
  for (let round = 0; round < 2; round++) {
    const { status, stderr } = generate('--check');
    expect(status).toBe(1);
    for (const path of [edited, missing, extra]) expect(stderr).toContain(`differs: ${String(path)}`);
  }
  expect(generate()).toMatchObject({ status: 0 });
  expect(existsSync(join(folder, String(extra)))).toBe(false);
  expect(generate('--check')).toMatchObject({ status: 0 });
});

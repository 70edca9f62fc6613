import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import bytes from './design-bytes.json' with { type: 'json' };

const ROOT = fileURLToPath(new URL('../../../../', import.meta.url));
const PROGRAM = join(ROOT, 'apps/fillwright/bin/fillwright.mjs');
const folder = mkdtempSync(join(tmpdir(), 'design-'));

function design(...args: string[]): { status: number | null; stdout: string; stderr: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, 'design', ...args], {
    encoding: 'utf8',
    cwd: ROOT,
  });
  return { status, stdout, stderr };
}

function changed(name: string, change: (text: string) => string): string {
  const path = join(folder, name);
  writeFileSync(path, change(readFileSync(join(ROOT, 'examples/alder-200.brief.yaml'), 'utf8')));
  return path;
}

/** Exit code of each example: 1 where nothing in stock can fill it. */
const EXAMPLES: Readonly<Record<string, number>> = {
  'alder-200': 0,
  'hazel-25': 0,
  'juniper-too-much': 1,
  'published-starch': 0,
  'rowan-poor-flow': 0,
};

describe('fillwright design', () => {
  const schema = JSON.parse(readFileSync(join(ROOT, 'docs/schemas/design.schema.json'), 'utf8')) as object;
  const validate = new Ajv2020().compile(schema);

  test('golden: every example is listed here with its outcome', () => {
    const names = readdirSync(join(ROOT, 'examples')).filter((name) => name.endsWith('.brief.yaml'));
    expect(names.map((name) => name.replace('.brief.yaml', ''))).toEqual(Object.keys(EXAMPLES));
  });
  test.each(Object.entries(EXAMPLES))(
    'golden: %s ends with exit code %s, its JSON fits the shipped schema',
    (name, code) => {
      const path = `examples/${name}.brief.yaml`;
      const { status, stdout, stderr } = design(path, '--json');
      expect([status, stderr]).toEqual([code, '']);
      const result: unknown = JSON.parse(stdout);
      expect(validate(result), JSON.stringify(validate.errors)).toBe(true);
      expect(stdout).not.toContain(folder);
      const text = design(path);
      expect(text.status).toBe(code);
      expect(text.stdout).toContain(code === 0 ? 'Setting sheet, set-up 1' : 'Nothing in stock fills this brief');
      expect(Math.max(...text.stdout.split('\n').map((line) => line.length))).toBeLessThanOrEqual(120);
      expect(text.stdout).not.toMatch(/undefined|NaN|cannot tell mg/);
    },
  );
  // Proof of "the same bytes on every Node", not of correctness: change the hash with the model, and say so in the changelog.
  test('regression: the demo product gives the same bytes on every Node', () => {
    const { stdout } = design('examples/alder-200.brief.yaml', '--json', '--seed', '1');
    expect(createHash('sha256').update(stdout).digest('hex')).toBe(bytes.sha256);
  });
  test('golden: the demo product prints its figures: 430.5 mg, pins, forces, limits (design reference)', () => {
    const { stdout } = design('examples/alder-200.brief.yaml');
    for (const figure of [
      '229.2 mg',
      'scale 21.5',
      'on stop, 15 N',
      'on stop, 36 N',
      '430.5 mg',
      '417.1 to 442.9',
      '514.1 to 539.9',
    ])
      expect(stdout).toContain(figure);
  });
  test('golden: another set-up of the ranking can be printed', () => {
    expect(design('examples/alder-200.brief.yaml', '--rank', '2').stdout).toContain('Setting sheet, set-up 2');
  });
  test.each([
    ['no brief', [], 2, 'Name the brief'],
    ['a file that is not there', ['examples/nothing.brief.yaml'], 3, 'nothing.brief.yaml'],
    ['a rank that is not there', ['examples/alder-200.brief.yaml', '--rank', '99'], 2, 'There is no set-up 99'],
    [
      'a seed that is no whole number',
      ['examples/alder-200.brief.yaml', '--seed', '1.5'],
      2,
      '--seed takes a whole number',
    ],
    ['an unknown flag', ['examples/alder-200.brief.yaml', '--jsn'], 2, 'the nearest is --json'],
  ] as const)('refuses: %s', (...[, args, code, sentence]) => {
    const { status, stdout, stderr } = design(...args);
    expect([status, stdout]).toEqual([code, '']);
    expect(stderr).toContain(sentence);
  });
  test('refuses: several faults at once, each with its line', () => {
    const path = changed('wrong.brief.yaml', (text) =>
      text
        .replace('bulkDensity_g_per_mL: 0.50', 'bulkDensity: 0.50')
        .replace('total_mg: 430', 'total_mg: 43,0')
        .replace("'0', lot", '00, lot'),
    );
    const { status, stdout, stderr } = design(path);
    expect([status, stdout]).toEqual([2, '']);
    expect(
      stderr
        .trim()
        .split('\n')
        .every((line) => /:\d+:\d+ /.test(line)),
    ).toBe(true);
    for (const hint of ['bulkDensity_g_per_mL', 'point', 'quot']) expect(stderr).toContain(hint);
  });
});

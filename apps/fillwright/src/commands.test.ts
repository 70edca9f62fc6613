import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const PROGRAM = fileURLToPath(new URL('../bin/fillwright.mjs', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'commands-'));

/** Runs the built program as a person does. */
function fillwright(...args: string[]): { status: number | null; stdout: string; stderr: string } {
  // The report of all check cases is longer than what a child may print unless told.
  const options = { encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 } as const;
  const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, ...args], options);
  return { status, stdout, stderr };
}

function file(name: string, content: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

/** 1 kgf = 9.80665 N: 3rd General Conference on Weights and Measures (1901). */
const FORCE = {
  ...{ id: 'force.10', group: 'forces', method: 'quantity.kilogram-force', inputs: { force_kgf: 10 } },
  ...{ expected: 98.0665, tolerance: { abs: 0.0001 }, source: 'definition of the kilogram-force' },
};

describe('fillwright', () => {
  test('golden: the overview names every command, the version is one line', () => {
    const { status, stdout } = fillwright();
    expect(status).toBe(0);
    for (const name of ['methods', 'compute', 'verify', 'help']) expect(stdout).toContain(`\n  ${name} `);
    expect(fillwright('--help').stdout).toBe(stdout);
    expect(fillwright('--version').stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
    expect(fillwright('help', 'verify').stdout).toBe(fillwright('verify', '--help').stdout);
  });
  test.each([
    ['a command', ['comptue'], 'the nearest is compute'],
    ['a command to be explained', ['help', 'verfy'], 'the nearest is verify'],
    ['a flag', ['methods', '--jsn'], 'the nearest is --json'],
    ['a method', ['compute', 'quantity.kilogramforce'], 'nearest: quantity.kilogram-force'],
    ['words without a match', ['methods', 'zzz'], 'No method matches "zzz"'],
    ['a group', ['verify', '--group', 'nowhere'], 'the groups are'],
  ])('refuses: %s that is not known -> 2', (_, args, sentence) => {
    const { status, stdout, stderr } = fillwright(...args);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain(sentence);
  });
  test('limit: whoever stops reading early ends it quietly', () => {
    const line = `set -o pipefail; "${process.execPath}" "${PROGRAM}" verify --json | head -n 1`;
    expect(spawnSync('bash', ['-c', line], { encoding: 'utf8' })).toMatchObject({
      status: 0,
      stdout: '{\n',
      stderr: '',
    });
  });
});

describe('fillwright methods', () => {
  test('golden: the list holds the words, a method shows all about itself', () => {
    expect(fillwright('methods', 'KILOGRAM', 'force').stdout).toMatch(/^quantity\.kilogram-force +\S.*\n$/);
    const { stdout } = fillwright('methods', 'quantity.kilogram-force');
    for (const part of ['--force_kgf', 'force_N', 'equation', 'validity', 'rests on', 'from memory', 'check values'])
      expect(stdout).toContain(part);
  });
  test('golden: --json gives the list and the method as data', () => {
    expect(JSON.parse(fillwright('methods', 'kilogram', '--json').stdout)).toMatchObject([
      { id: 'quantity.kilogram-force' },
    ]);
    const one = JSON.parse(fillwright('methods', 'quantity.kilogram-force', '--json').stdout) as Record<
      string,
      unknown
    >;
    expect(one).toMatchObject({ inputs: [{ key: 'force_kgf', unit: 'kgf' }], outputs: [{ key: 'force_N' }] });
  });
});

describe('fillwright compute', () => {
  test('golden: value with unit, source and validity', () => {
    const { status, stdout } = fillwright('compute', 'quantity.kilogram-force', '--force_kgf', '10');
    expect(status).toBe(0);
    expect(stdout).toMatch(/^force_N +98\.0665 N\nsource .*\nvalidity .*\n$/);
  });
  test('golden: a list repeats its flag; equal masses of 1 and 3 g/mL make 1.5 g/mL', () => {
    const shares = ['--mass-shares_frac', '0.5', '--mass-shares_frac=.5'];
    const densities = ['--densities_g_per_mL', '1', '--densities_g_per_mL', '3e0'];
    const { stdout } = fillwright('compute', ...shares, ...densities, '--json', 'materials.mixture-density');
    expect(JSON.parse(stdout)).toMatchObject({
      method: 'materials.mixture-density',
      outputs: { density_g_per_mL: 1.5 },
    });
  });
  test('golden: groups are written as JSON, one a flag or all in one; 2^2 is orthogonal', () => {
    const rest = ['{"levels_ratio":[1,-1]}', '{"levels_ratio":[-1,1]}', '{"levels_ratio":[1,1]}'];
    const args = ['compute', 'statistics.design-efficiency', '--model', 'interactions', '--json'];
    const each = ['{"levels_ratio":[-1,-1]}', ...rest].flatMap((run) => ['--runs', run]);
    const whole = ['--runs', `[{"levels_ratio":[-1,-1]},${rest.join(',')}]`];
    for (const runs of [each, whole])
      expect(JSON.parse(fillwright(...args, ...runs).stdout)).toMatchObject({ outputs: { isEstimable: true } });
  });
  test('refuses: a group that is no JSON, or lacks a field -> 2', () => {
    for (const runs of ['-1 1', '{"levels":[1]}', '{"levels_ratio":[null]}']) {
      const { status, stderr } = fillwright(
        'compute',
        'statistics.design-efficiency',
        '--model',
        'quadratic',
        `--runs=${runs}`,
      );
      expect([status, stderr.includes('--runs')]).toEqual([2, true]);
    }
  });
  test('refuses: all missing inputs at once, with their ranges', () => {
    const { status, stderr } = fillwright('compute', 'dosing.spring-force');
    expect(status).toBe(2);
    for (const flag of ['--preload_N', '--rate_N_per_mm', '--compression_mm'])
      expect(stderr).toMatch(new RegExp(`^${flag} is missing.*allowed: at least 0`, 'm'));
  });
  test.each([
    ['a decimal comma', ['--force_kgf', '1,5'], 'decimal point instead of the comma: 1.5'],
    ['a mark for thousands', ['--force_kgf', "1'000.5"], 'without any mark for thousands'],
    ['a negative value', ['--force_kgf', '-1'], '--force_kgf is -1, out of range'],
    ['NaN', ['--force_kgf', 'NaN'], '--force_kgf is "NaN"'],
    ['an infinite value', ['--force_kgf', '1e999'], 'not a finite number'],
    ['a value with its unit', ['--force_kgf', '5kgf'], '--force_kgf is "5kgf"'],
    ['an empty value', ['--force_kgf='], '--force_kgf is empty'],
    ['a flag without value', ['--force_kgf', '--json'], '--force_kgf needs a value'],
    ['a flag without its unit', ['--force', '5'], 'the nearest is --force_kgf'],
    ['a value given twice', ['--force_kgf', '5', '--force_kgf', '6'], 'more than once'],
    ['a value without a flag', ['5'], '"5" is not expected'],
  ])('refuses: %s -> 2', (_, args, sentence) => {
    const { status, stdout, stderr } = fillwright('compute', 'quantity.kilogram-force', ...args);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain(sentence);
  });
  test('refuses: values that do not go together -> 2 with a sentence', () => {
    const densities = ['--bulk-density_g_per_mL', '0.6', '--tapped-density_g_per_mL', '0.5'];
    const { status, stderr } = fillwright('compute', 'materials.flow-indices', ...densities);
    expect(status).toBe(2);
    expect(stderr).toContain('The tapped density is below the bulk density');
  });
});

describe('fillwright verify', () => {
  const cases = [
    FORCE,
    { ...FORCE, id: 'force.off', expected: 98.1 },
    { ...FORCE, id: 'force.negative', inputs: { force_kgf: -1 } },
    { ...FORCE, id: 'other.unknown', group: 'others', method: 'quantity.stone' },
  ];
  test('golden: counts by group, verdict and deviation of each case, exit 1', () => {
    const { status, stdout } = fillwright('verify', file('mixed.json', { cases }), '--json');
    expect(status).toBe(1);
    const report = JSON.parse(stdout) as { cases: { deviation: number }[] };
    expect(report).toMatchObject({
      summary: { total: 4, pass: 1, fail: 1, cannotTell: 2, disputed: 0 },
      groups: { forces: { total: 3, pass: 1, fail: 1, cannotTell: 1 }, others: { total: 1, cannotTell: 1 } },
      cases: [
        { id: 'force.10', source: FORCE.source, got: expect.closeTo(98.0665, 10) as number, verdict: 'pass' },
        { id: 'force.off', verdict: 'fail' },
        { id: 'force.negative', got: null, deviation: null, verdict: 'cannot-tell' },
        { id: 'other.unknown', verdict: 'cannot-tell' },
      ],
    });
    expect(report.cases[1]?.deviation).toBeCloseTo(0.0335, 12);
  });
  test('golden: the text puts first what did not pass, and ends with the counts', () => {
    const { stdout } = fillwright('verify', file('mixed.json', cases), '--group', 'forces');
    const at = ['FAIL', 'CANNOT TELL', 'pass'].map((word) => stdout.search(new RegExp(`^  ${word} `, 'm')));
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(stdout).toMatch(/3 cases: 1 pass, 1 fail, 1 cannot tell, 0 disputed\n$/);
    for (const line of stdout.split('\n')) expect(line.length).toBeLessThanOrEqual(120);
  });
  test('golden: a file in which all pass, exit 0', () => {
    expect(fillwright('verify', file('good.json', [FORCE])).status).toBe(0);
  });
  test.each([
    ['no JSON', '{"cases": [', 'is not JSON'],
    ['an empty list', [], 'no check case'],
    ['a case without source', [{ ...FORCE, source: undefined }], 'cases.0.source is missing'],
    ['another form', { set: 'x', cases: [FORCE] }, 'set is not known'],
  ])('refuses: %s -> 2', (_, content, sentence) => {
    const { status, stdout, stderr } = fillwright('verify', file('bad.json', content));
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain(sentence);
  });
  test('refuses: a file that is not there -> 3', () => {
    expect(fillwright('verify', join(folder, 'none.json'))).toMatchObject({ status: 3, stdout: '' });
  });
  test('golden: the cases of the program, exit 0 with none failing', () => {
    const { status, stdout } = fillwright('verify', '--json');
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ summary: { fail: 0, cannotTell: 0 } });
  });
});

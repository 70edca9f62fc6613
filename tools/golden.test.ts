import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'golden-'));

function convert(content: unknown): { status: number | null; problems: string; cases: Record<string, unknown>[] } {
  const [from, to] = [join(folder, 'in.json'), join(folder, 'out.json')];
  writeFileSync(from, typeof content === 'string' ? content : JSON.stringify(content));
  const { status, stderr } = spawnSync(process.execPath, ['tools/golden.mjs', from, '--out', to], { encoding: 'utf8' });
  return { status, problems: stderr, cases: status === 0 ? (JSON.parse(readFileSync(to, 'utf8')) as never) : [] };
}

const FORCE = {
  id: 'some.force',
  topic: '3-dosing-disc',
  equation: ' constant compressing   force used in a plug study ',
  inputs: { kgf: 10 },
  expected: 0.0980665,
  tolerance: { abs: 0.0001 },
  unit: 'kN',
  source: 'definition of the kilogram-force',
  fromMemory: true,
  kind: 'published',
};
const of = (equation: string, rest: object): object => ({ ...FORCE, equation, ...rest });

describe('npm run golden', () => {
  test('golden: maps by equation up to blanks, scales by unit, keeps source with memory and kind', () => {
    expect(convert([FORCE])).toMatchObject({
      status: 0,
      cases: [
        {
          id: 'some.force',
          group: '3-dosing-disc',
          method: 'quantity.kilogram-force',
          inputs: { force_kgf: 10 },
          expected: 98.0665,
          tolerance: { abs: 0.1 },
          source: 'definition of the kilogram-force (from memory) [published]',
        },
      ],
    });
  });
  test('golden: several outputs by key, an open end as null, a grade in lower case, inputs in any order', () => {
    const { cases } = convert([
      of('table: compressibility index band <-> Hausner band', {
        inputs: { CI_band_pct: [38, null], grade: 'Very, very poor' },
        ...{ expected: [1.6, null], tolerance: { abs: 0 }, unit: '-' },
      }),
      of('CI = 100 (rho_t - rho_b)/rho_t ; H = rho_t/rho_b', {
        ...{
          id: 'b',
          inputs: { rho_t: 0.8, rho_b: 0.6 },
          expected: [0.25, 1.333],
          tolerance: { abs: 0.001 },
          unit: '-, -',
        },
      }),
    ]);
    expect(cases[0]).toMatchObject({
      method: 'materials.flow-band',
      inputs: { grade: 'very, very poor' },
      expected: { hausnerLower_ratio: 1.6, hausnerUpper_ratio: null },
      tolerance: { abs: 0 },
    });
    expect(cases[1]).toMatchObject({
      inputs: { bulkDensity_g_per_mL: 0.6, tappedDensity_g_per_mL: 0.8 },
      expected: { compressibilityIndex_pct: 25, hausner_ratio: 1.333 },
      tolerance: { fields: { compressibilityIndex_pct: { abs: 0.1 }, hausner_ratio: { abs: 0.001 } } },
    });
  });
  test('golden: a single value where the method takes a list', () => {
    const pressure = { inputs: { D_mm: 7, F_N: 100 }, expected: 0.0025984, tolerance: { rel: 0.001 }, unit: 'GPa' };
    expect(convert([of('P = F/A', pressure)]).cases[0]).toMatchObject({
      inputs: { forces_N: [100], boreDiameter_mm: 7 },
      expected: [2.5984],
      tolerance: { rel: 0.001 },
    });
  });
  test('golden: the headroom volume is one of several outputs and stands under its key', () => {
    const { cases } = convert([
      of(
        'h = closedLength - bodyLength - dwtCap/2 ; r=(capOD-dwtCap)/2 ; V = pi h^2 (r - h/3)  (spherical segment, h<=r)',
        {
          inputs: { size: 'X', capDoubleWall_mm: 0.2, capOD_mm: 7.6, body_mm: 18, closed_mm: 21 },
          ...{ expected: 0.077, unit: 'mL' },
        },
      ),
    ]);
    expect(cases[0]).toMatchObject({ expected: { headroomVolume_mm3: 77 }, tolerance: { abs: 0.1 } });
  });
  test.each([
    ['an equation without a method', { equation: 'E = m c^2' }, 'no method for the equation "E = m c^2"'],
    ['an input that is not known', { inputs: { kgf: 1, lbf: 2 } }, 'input "lbf" is not known'],
    ['a unit that does not fit', { unit: 'mm' }, 'unit "mm" cannot be turned into N'],
    ['a case without id', { id: undefined }, 'has no id'],
    ['a tolerance of another form', { tolerance: { ulp: 2 } }, 'tolerance "ulp" is not known'],
  ])('refuses: %s is left out and listed', (_, change, why) => {
    const { status, problems, cases } = convert([
      { ...FORCE, id: 'kept' },
      { ...FORCE, ...change },
    ]);
    expect(status).toBe(0);
    expect(cases.map(({ id }) => id)).toEqual(['kept']);
    expect(problems).toContain(why);
    expect(problems).toContain('1 of 2 cases converted (1 check cases), 1 left out');
  });
  test('golden: a case of a set that speaks of several methods becomes one check case for each', () => {
    const lot = { mean: 97, sd: 4, T: 100, L1: 15, L2: 25, distribution: 'normal' };
    const oc = { p_stage1_exact: 0.9, p_av30_exact: 0.8, p_pass: 0.7 };
    const { cases } = convert({
      set: 'udu_oc',
      cases: [{ id: 'x', inputs: lot, expected: oc, tolerance: { abs: 1e-6, fields: { p_pass: { abs: 0.001 } } } }],
    });
    expect(cases).toMatchObject([
      { id: 'x.10-units', group: 'udu_oc', inputs: { unitCount: 10 }, expected: 0.9, tolerance: { abs: 1e-6 } },
      { id: 'x.30-units', inputs: { unitCount: 30 }, expected: 0.8 },
      { id: 'x.both-stages', method: 'statistics.dosage-units-pass', expected: 0.7, tolerance: { abs: 0.001 } },
    ]);
  });
  test('golden: contents are gross less shell, without the noise of the subtraction', () => {
    const { cases } = convert({
      set: 'uniformity_of_mass',
      cases: [
        {
          ...{ id: 'm', inputs: { test: 'EP 2.9.5 capsules', gross_mg: [442.9], shell_mg: [79.9] } },
          ...{ expected: { mean_net: 363, passes: true }, tolerance: { abs: 1e-9 } },
        },
        { id: 'other', inputs: { test: 'a test that no method applies' }, expected: {} },
      ],
    });
    expect(cases).toMatchObject([{ inputs: { contents_mg: [363] }, expected: { verdict: 'pass', mean_mg: 363 } }]);
  });
  test('refuses: the cases of a set without methods are left out', () => {
    const { status, problems, cases } = convert({
      set: 'arl',
      cases: [{ id: 'arl-1', inputs: {}, expected: { arl: 370.4 } }],
    });
    expect([status, cases]).toEqual([0, []]);
    expect(problems).toContain('no method for this case of the set "arl"');
  });
  test.each(['{', '{}', '3'])('refuses: %s is not of the form, exit 2', (text) => {
    expect(convert(text)).toMatchObject({ status: 2 });
  });
  test('refuses: a file that cannot be read, exit 3', () => {
    expect(spawnSync(process.execPath, ['tools/golden.mjs', join(folder, 'none.json')]).status).toBe(3);
  });
});

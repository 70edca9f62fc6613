import type { FileFault } from '@fillwright/engine/catalogue';
import { describe, expect, test } from 'vitest';
import { readBrief, type BriefRead } from './read-brief.ts';

const BRIEF = `format: 1
product: { code: FW-X01, name: Oak 90 }
parts:
  - name: blend
    dose: powder
    target:
      rule: fixed-total
      total_mg: 300
      otherExcipients_mg: 20
      substances:
        - name: oak base
          claim_mg: 90
          water_pct: 1.5
    blendRsd_pct: guess
    material:
      bulkDensity_g_per_mL: 0.50
      tappedDensity_g_per_mL: 0.64
      feedDensity_g_per_mL: { mean: 0.54, sd: 0.01, n: 3, date: 2026-03-02 }
      compression: { law: kawakita, a_frac: 0.55, b_per_MPa: 1.6 }
      slug: { isHeld: true, force_N: 50 }
shells:
  - size: '1'
    lot: S-1
    mass_mg: { mean: 76, sd: 1.8, n: 50 }
  - size: '2'
filler: generic
validated:
  pinDepth: { min_mm: 0, max_mm: 5 }
inProcess:
  sampleCount: 20
  meanAction_pct: 3
  individualAction_pct: 7.5
  individualAlert_pct: 5
route:
  - { test: dosage-units-by-mass, use: release }
  - { test: uniformity-of-mass, use: in-process }
record:
  unit_pct: 2.2
`;

function read(text: string, files: Readonly<Record<string, string>> = {}): Promise<BriefRead> {
  const all: Readonly<Record<string, string>> = { 'work/oak.brief.yaml': text, ...files };
  const readText = (path: string): Promise<string> => {
    const found = all[path];
    return found === undefined ? Promise.reject(new Error(`no ${path}`)) : Promise.resolve(found);
  };
  return readBrief({ path: 'work/oak.brief.yaml', readText });
}

async function faultsOf(text: string, files?: Readonly<Record<string, string>>): Promise<readonly FileFault[]> {
  const result = await read(text, files);
  return result.ok ? [] : result.faults;
}

function edited(from: string, to: string): string {
  expect(BRIEF).toContain(from);
  return BRIEF.replace(from, () => to);
}

function lineOf(text: string, part: string): number {
  return text.slice(0, text.indexOf(part)).split('\n').length;
}

const BULK = 'parts.0.material.bulkDensity_g_per_mL';
const TARGET = 'parts.0.target';

describe('readBrief', () => {
  test('golden: number forms become quantities of the engine', async () => {
    const result = await read(BRIEF);
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    const [part] = result.brief.parts;
    // model.md section 2 of the design notes: 2 % of one density; a spread as written; `guess` leaves the key out.
    expect(part.material.bulkDensity_g_per_mL).toEqual({
      basis: 'measured',
      mean: 0.5,
      sd: 0.01,
      n: 1,
      sdAssumed: true,
    });
    expect(part.material.feedDensity_g_per_mL).toEqual({
      basis: 'measured',
      mean: 0.54,
      sd: 0.01,
      n: 3,
      date: '2026-03-02',
    });
    expect(Object.keys(part)).not.toContain('blendRsd_pct');
    expect(result.brief.shells[0]?.mass_mg).toEqual({ mean: 76, sd: 1.8, n: 50 });
    expect(result.brief.record?.unit_pct).toMatchObject({ mean: 2.2, n: 1, sdAssumed: true });
    expect(result.filler.id).toBe('generic');
    expect(result.shells.map(({ size }) => size)).toEqual(['1', '2']);
  });

  // Each row: what is replaced, by what, and the fault. The fault stands in the line that was changed.
  test.each<[string, string, Partial<FileFault>]>([
    // numbers
    ['bulkDensity_g_per_mL: 0.50', 'bulkDensity_g_per_mL: -0.5', { code: 'out-of-range', field: BULK, value: '-0.5' }],
    [
      'bulkDensity_g_per_mL: 0.50',
      'bulkDensity_g_per_mL: 5',
      { code: 'out-of-range', allowed: 'a number, at least 0.03, at most 3 g/mL' },
    ],
    ['bulkDensity_g_per_mL: 0.50', 'bulkDensity_g_per_mL: .nan', { code: 'not-finite', field: BULK, value: '.nan' }],
    ['bulkDensity_g_per_mL: 0.50', 'bulkDensity_g_per_mL: .inf', { code: 'not-finite', field: BULK }],
    ['bulkDensity_g_per_mL: 0.50', 'bulkDensity_g_per_mL: 1e999', { code: 'not-finite', field: BULK, value: '1e999' }],
    ['bulkDensity_g_per_mL: 0.50', 'bulkDensity_g_per_mL: 0,50', { code: 'decimal-comma', field: BULK, value: '0,50' }],
    ['bulkDensity_g_per_mL: 0.50', 'bulkDensity_g_per_mL: 0,543', { code: 'decimal-comma', field: BULK }],
    [
      '{ mean: 0.54, sd',
      '{ mean: 0,54, sd',
      { code: 'decimal-comma', field: 'parts.0.material.feedDensity_g_per_mL.mean', value: '0,54' },
    ],
    ['total_mg: 300', "total_mg: 1'300", { code: 'thousands-mark', field: `${TARGET}.total_mg`, value: "1'300" }],
    ['total_mg: 300', 'total_mg: 1 300', { code: 'thousands-mark' }],
    ['total_mg: 300', 'total_mg: 1_300', { code: 'thousands-mark' }],
    ['total_mg: 300', 'total_mg: 1,300', { code: 'thousands-mark', value: '1,300' }],
    ['total_mg: 300', 'total_mg: 1.300,5', { code: 'thousands-mark' }],
    [
      'total_mg: 300',
      'total_mg: "300"',
      { code: 'wrong-kind', allowed: 'a number, above 0, at most 3000 mg, without quotation marks' },
    ],
    ['total_mg: 300', 'total_mg: 300 mg', { code: 'wrong-kind', value: '300 mg' }],
    ['total_mg: 300', 'total_mg:', { code: 'wrong-kind', field: `${TARGET}.total_mg` }],
    ['total_mg: 300', 'total_mg: true', { code: 'wrong-kind', value: 'true' }],
    ['total_mg: 300', 'total_mg: 3001', { code: 'out-of-range' }],
    ['water_pct: 1.5', 'water_pct: 51', { code: 'out-of-range' }],
    [
      'sampleCount: 20',
      'sampleCount: 20.5',
      { code: 'wrong-kind', allowed: 'a whole number, at least 1, at most 1000, or guess' },
    ],
    ['sampleCount: 20', 'sampleCount: 1001', { code: 'out-of-range' }],
    ['n: 3, date', 'n: 0, date', { code: 'out-of-range', field: 'parts.0.material.feedDensity_g_per_mL.n' }],
    ['sd: 0.01, n: 3', 'sd: -0.01, n: 3', { code: 'out-of-range', field: 'parts.0.material.feedDensity_g_per_mL.sd' }],
    ['sd: 1.8, n: 50', 'sd: 1.8', { code: 'missing', field: 'shells.0.mass_mg.n' }],
    [
      'mass_mg: { mean: 76, sd: 1.8, n: 50 }',
      'mass_mg: 76',
      { code: 'wrong-kind', allowed: 'a mapping with mean, sd, n' },
    ],
    ['date: 2026-03-02', 'date: 2026-02-30', { code: 'wrong-kind', allowed: 'a date as 2026-03-02' }],
    [
      'pinDepth: { min_mm: 0, max_mm: 5 }',
      'pinDepth: { min_mm: 0, max_mm: 61 }',
      { code: 'out-of-range', field: 'validated.pinDepth.max_mm' },
    ],
    ['bulkDensity_g_per_mL: 0.50', 'bulkDensity_g_per_mL: guess', { code: 'wrong-kind', value: 'guess' }],
    // keys and units
    [
      'bulkDensity_g_per_mL',
      'bulkDensity',
      { code: 'unit-missing', field: 'parts.0.material.bulkDensity', nearest: 'bulkDensity_g_per_mL' },
    ],
    [
      'bulkDensity_g_per_mL: 0.50',
      'bulkDensity_kg_per_m3: 500',
      { code: 'unit-wrong', nearest: 'bulkDensity_g_per_mL', facts: { converted: 0.5 } },
    ],
    ['total_mg: 300', 'total_g: 0.3', { code: 'unit-wrong', nearest: 'total_mg', facts: { converted: 300 } }],
    ['b_per_MPa: 1.6', 'b_per_kPa: 0.0016', { code: 'unit-wrong', nearest: 'b_per_MPa', facts: { converted: 1.6 } }],
    ['bulkDensity_g_per_mL', 'bulkDensty_g_per_mL', { code: 'unknown-field', nearest: 'bulkDensity_g_per_mL' }],
    ['slug: {', 'slugg: {', { code: 'unknown-field', field: 'parts.0.material.slugg', nearest: 'slug' }],
    ['filler: generic', 'filler: generic\nzzz: 1', { code: 'unknown-field', field: 'zzz' }],
    ['filler: generic', 'filler: generic\n"a.b": 1', { code: 'unknown-field', field: 'a.b' }],
    ['filler: generic', 'filler: generic\n<<: { a: 1 }', { code: 'unknown-field', field: '<<' }],
    ['filler: generic', 'filler: generic\n__proto__: 1', { code: 'unknown-field', field: '__proto__' }],
    [
      'filler: generic',
      'filler: generic\nfiller: generic',
      { code: 'duplicate-key', field: 'filler', facts: { firstLine: 26 }, line: 27 },
    ],
    // sizes
    ["- size: '1'", '- size: 00', { code: 'quote-it', field: 'shells.0.size', value: '00' }],
    ["- size: '1'", '- size: 0', { code: 'quote-it', value: '0' }],
    ["- size: '1'", '- size: 1', { code: 'quote-it', value: '1' }],
    ["- size: '1'", "- size: '01'", { code: 'not-a-choice', field: 'shells.0.size', value: '01' }],
    ["- size: '1'", '- size: 0EL', { code: 'not-a-choice', nearest: '0el' }],
    // words
    ['lot: S-1', 'lot: 2207', { code: 'quote-it', field: 'shells.0.lot', value: '2207' }],
    ['name: blend', 'name: ""', { code: 'wrong-kind', field: 'parts.0.name' }],
    ['isHeld: true', 'isHeld: yes', { code: 'wrong-kind', allowed: 'true or false' }],
    ['use: in-process', 'use: inprocess', { code: 'not-a-choice', nearest: 'in-process' }],
    [
      'rule: fixed-total',
      'rule: fixed-totl',
      { code: 'not-a-choice', field: `${TARGET}.rule`, nearest: 'fixed-total' },
    ],
    [
      'law: kawakita',
      'law: kawakta',
      { code: 'not-a-choice', field: 'parts.0.material.compression.law', nearest: 'kawakita' },
    ],
    ['dose: powder', 'dose: pellets', { code: 'not-a-choice', allowed: 'powder' }],
    ['format: 1', 'format: 2', { code: 'not-a-choice', allowed: '1' }],
    [
      'filler: generic',
      'filler: general',
      { code: 'wrong-kind', allowed: 'generic, or a relative path with forward slashes that ends in .filler.yaml' },
    ],
    ['filler: generic', 'filler: /etc/x.filler.yaml', { code: 'wrong-kind', field: 'filler' }],
    ['filler: generic', 'filler: two.filler.yaml', { code: 'file', field: 'filler', value: 'two.filler.yaml' }],
    ['  meanAction_pct: 3\n', '', { code: 'missing', field: 'inProcess.meanAction_pct', line: 29 }],
    [
      'route:\n',
      'route: []\nroute2:\n',
      { code: 'wrong-length', field: 'route', value: '0', allowed: 'a list of 1 to 8' },
    ],
    [
      'product: { code: FW-X01, name: Oak 90 }',
      'product: Oak',
      { code: 'wrong-kind', allowed: 'a mapping with code, name' },
    ],
    // a list where a mapping belongs
    ['slug: { isHeld: true, force_N: 50 }', 'slug: [1, 2]', { code: 'wrong-kind', field: 'parts.0.material.slug' }],
  ])('refuses: %s -> %s', async (from, to, expected) => {
    const text = edited(from, to);
    const faults = await faultsOf(text);
    expect(faults).toContainEqual(expect.objectContaining({ file: 'work/oak.brief.yaml', ...expected }));
    const fault = faults.find(({ code }) => code === expected.code);
    const changed = to.split('\n').at(-1) ?? '';
    if (expected.line === undefined && changed !== '') expect(fault?.line).toBe(lineOf(text, changed));
    const stray = faults.filter(({ field, code }) => code !== expected.code && field !== 'route2');
    expect(stray).toEqual([]);
  });

  test('refuses: everything at once, each thing once', async () => {
    const text = BRIEF.replace('bulkDensity_g_per_mL: 0.50', 'bulkDensity: 0.50')
      .replace("- size: '1'", '- size: 00')
      .replace('  meanAction_pct: 3\n', '')
      .replace('individualAlert_pct: 5', 'individualAlert_pct: 9')
      .replace('total_mg: 300', 'total_mg: 0,3');
    const faults = await faultsOf(text);
    expect(faults.map(({ code, field }) => `${code} ${field}`).sort()).toEqual([
      'conflict inProcess.individualAlert_pct',
      'decimal-comma parts.0.target.total_mg',
      'missing inProcess.meanAction_pct',
      'quote-it shells.0.size',
      'unit-missing parts.0.material.bulkDensity',
    ]);
  });

  test('refuses: a brief that is not there', async () => {
    const result = await readBrief({ path: 'x.brief.yaml', readText: () => Promise.reject(new Error('ENOENT')) });
    expect(result).toEqual({
      ok: false,
      kind: 'file',
      faults: [{ code: 'file', field: '', value: 'x.brief.yaml', file: 'x.brief.yaml' }],
    });
  });
  test('refuses: a filler file that is not there, as a matter of files', async () => {
    expect(await read(edited('filler: generic', 'filler: ./two.filler.yaml'))).toMatchObject({
      ok: false,
      kind: 'file',
    });
  });
  test('refuses: faults of the files it names, under their own names', async () => {
    const text = edited('filler: generic', 'filler: ../two.filler.yaml').replace(
      "- size: '2'",
      "- size: '2'\n    record: ./own.shell.yaml",
    );
    const faults = await faultsOf(text, { 'two.filler.yaml': 'format: 1\n', 'work/own.shell.yaml': 'sise: 2' });
    expect(faults).toContainEqual(
      expect.objectContaining({ file: 'two.filler.yaml', code: 'missing', field: 'id', line: 1 }),
    );
    expect(faults).toContainEqual(
      expect.objectContaining({ file: 'work/own.shell.yaml', field: 'sise', nearest: 'size' }),
    );
  });
  test('golden: a shell file replaces the table', async () => {
    const shell =
      "format: 1\nsize: '2'\nsource: own\nbodyVolume_mm3: 365\nbodyLength_mm: { mean: 15.3, sd: 0.1, n: 20 }\n";
    const text = edited("- size: '2'", "- size: '2'\n    record: own.shell.yaml");
    const result = await read(text, { 'work/own.shell.yaml': shell });
    expect(result).toMatchObject({
      ok: true,
      shells: [{ size: '1' }, { size: '2', bodyLength_mm: { value: 15.3, source: 'own' } }],
    });
  });
  test('golden: values repeated by reference read as written out', async () => {
    const text = edited('{ min_mm: 0, max_mm: 5 }', '&d { min_mm: 14, max_mm: 15 }').replace(
      'inProcess:',
      '  discHeight: *d\ninProcess:',
    );
    const result = await read(text);
    expect(result).toMatchObject({ ok: true, brief: { validated: { discHeight: { min_mm: 14, max_mm: 15 } } } });
  });
});

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { WeightsRead } from '@fillwright/contract/weights';
import type { WeightsJudgement } from '@fillwright/engine/weights';
import { describe, expect, test } from 'vitest';
import { run } from './accept.ts';

const ROOT = fileURLToPath(new URL('../../../../', import.meta.url));
const PROGRAM = join(ROOT, 'apps/fillwright/bin/fillwright.mjs');
const EXAMPLES = join(ROOT, 'examples');
const folder = mkdtempSync(join(tmpdir(), 'accept-'));

interface Ran {
  readonly code: number;
  readonly out: string;
  readonly problem: string;
}

async function accept(...args: string[]): Promise<Ran> {
  const [out, problem]: [string[], string[]] = [[], []];
  const code = await run(args, { out: (text) => out.push(text), problem: (text) => problem.push(text) });
  return { code, out: out.join('\n'), problem: problem.join('\n') };
}

async function judgementOf(...args: string[]): Promise<{ code: number; judgement: WeightsJudgement }> {
  const { code, out, problem } = await accept(...args, '--json');
  expect(problem).toBe('');
  return { code, judgement: (JSON.parse(out) as { judgement: WeightsJudgement }).judgement };
}

let fileCount = 0;
function file(text: string): string {
  const path = join(folder, `weights-${fileCount++}.csv`);
  writeFileSync(path, text);
  return path;
}

interface Case {
  readonly id: string;
  readonly method: string;
  readonly inputs: {
    readonly contents_mg?: readonly number[];
    readonly gross_mg?: readonly number[];
    readonly shells_mg?: readonly number[];
    readonly assay_pct?: number;
    readonly target_pct?: number;
  };
  readonly expected: Readonly<Record<string, string | number>>;
}

const cases = (set: string, method: string): Case[] =>
  (JSON.parse(readFileSync(join(ROOT, `packages/engine/golden/${set}.json`), 'utf8')) as Case[]).filter(
    (each) => each.method === `statistics.${method}`,
  );

const comma = (value: number): string => String(value).replace('.', ',');
const pairs = ({ inputs: { gross_mg = [], shells_mg = [] } }: Case): string =>
  ['gross (mg);shell (mg)', ...gross_mg.map((mass, i) => `${comma(mass)};${comma(shells_mg[i] ?? NaN)}`)].join('\n');

const figures = ({ inputs: { assay_pct = NaN, target_pct = 100 } }: Case): string[] => [
  ...['--assay_pct', String(assay_pct), '--target-content_pct', String(target_pct)],
];

// Raw values of the check sets (independent programs in rational arithmetic, see each case's source) as a person would
// paste them: decimal commas, gross beside shell.
describe('fillwright accept: check sets', () => {
  test.each(cases('uniformity_of_mass', 'uniformity-of-mass'))('golden: $id, uniformity of mass', async (each) => {
    const path = file((each.inputs.contents_mg ?? []).map(comma).join('\n'));
    const asked = ['--basis', 'net', '--unit', 'mg', '--purpose', 'release', '--test', 'uniformity-of-mass'];
    const { code, judgement } = await judgementOf(path, ...asked);
    const [found] = judgement.tests;
    expect(found?.verdict).toBe(each.expected['verdict']);
    expect(code).toBe(each.expected['verdict'] === 'pass' ? 0 : 1);
    for (const key of ['mean_mg', 'limit_pct', 'largestDeviation_pct', 'beyondLimitCount', 'beyondTwiceCount'])
      if (key in each.expected) expect(found?.numbers[key]).toBeCloseTo(each.expected[key] as number, 8);
  });
  test.each(cases('uniformity_of_mass', 'supplement-mass').filter(({ inputs }) => inputs.gross_mg?.length === 20))(
    'golden: $id, supplements',
    async (each) => {
      const asked = ['--own-shells', '--purpose', 'release', '--test', 'supplement-mass'];
      const { judgement } = await judgementOf(file(pairs(each)), ...asked);
      // The case may hold 40 more capsules in fields of their own: the first step is what these 20 decide.
      if (!('furtherGross_mg' in each.inputs)) expect(judgement.tests[0]?.verdict).toBe(each.expected['verdict']);
      expect(judgement.tests[0]?.numbers['meanGross_mg']).toBeCloseTo(each.expected['meanGross_mg'] as number, 8);
    },
  );
  test.each(
    cases('udu_acceptance_value', 'acceptance-value-by-mass').filter(({ inputs }) => inputs.gross_mg?.length === 10),
  )('golden: $id, dosage units by mass', async (each) => {
    const asked = ['--own-shells', '--purpose', 'release', '--test', 'dosage-units-by-mass'];
    const { judgement } = await judgementOf(file(pairs(each)), ...asked, ...figures(each));
    const { numbers = {} } = judgement.tests[0] ?? {};
    for (const key of ['acceptanceValue_pct', 'reference_pct', 'sd_pct', 'meanNet_mg'])
      if (key in each.expected) expect(numbers[key]).toBeCloseTo(each.expected[key] as number, 7);
  });
});

const example = (name: string): string => join(EXAMPLES, name);
const SHELLS = ['--shells', example('alder-200-shells.csv')];
const BRIEF = ['--brief', example('alder-200.brief.yaml')];

describe('fillwright accept: examples', () => {
  test('golden: twenty gross weights of an in-process check are left alone', async () => {
    const { code, out, problem } = await accept(
      example('alder-200-gross.csv'),
      ...SHELLS,
      ...BRIEF,
      '--purpose',
      'in-process',
    );
    expect([code, problem]).toEqual([0, '']);
    expect(out).toMatch(/^Leave it alone: the mean of 43\d\.\d mg/);
    for (const text of ['20 weights, 5 struck', 'Limit card', 'a total or mean', 'single limit 397.8 mg'])
      expect(out).toContain(text);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(120);
    expect(out).not.toMatch(/undefined|NaN/);
  });
  test('golden: a revolution with column 4 light names pin 1 of column 4 and its 64.7 mg (FW-D01)', async () => {
    const { code, out } = await accept(
      example('alder-200-revolution.txt'),
      ...SHELLS,
      ...BRIEF,
      '--revolution',
      '--set-up',
      '1',
    );
    expect(code).toBe(1);
    expect(out.replace(/\s+/g, ' ')).toContain('free pin 1 of column 4');
    expect(out).toMatch(/pin 1 stuck up {2}column 4 {2}-64\.7 mg/);
    expect(out).not.toMatch(/undefined|NaN/);
  });
  test('golden: the same weights on standard input give the same JSON', () => {
    const path = example('alder-200-gross.csv');
    const piped = (name: string): string =>
      spawnSync(process.execPath, [PROGRAM, 'accept', name, ...BRIEF, '--json'], {
        ...{ encoding: 'utf8', cwd: ROOT, input: readFileSync(path, 'utf8') },
      }).stdout;
    expect(piped('-')).toBe(piped(path));
    const { read } = JSON.parse(piped('-')) as { read: WeightsRead };
    expect(read.capsules).toHaveLength(20);
  });
});

describe('fillwright accept: command line', () => {
  test('golden: weights alone are summed up; nothing was asked, so nothing can be told', async () => {
    const { code, out } = await accept(file('527,9 mg\n530,1 mg\n526,0 mg'), '--basis', 'net');
    expect(code).toBe(1);
    expect(out).toContain('Verdict: cannot tell, as trial; no limit and no test was asked about.');
  });
  test('golden: limits typed, outside: exit code 1', async () => {
    const light = Array.from({ length: 20 }, (_, i) => `${400 + (i % 3)},5`).join('\n');
    const limits = ['--target_mg', '430', '--mean-action_pct', '3', '--individual-action_pct', '7,5'];
    const { code, out } = await accept(file(light), '--basis', 'net', '--unit', 'mg', ...limits);
    expect(code).toBe(1);
    expect(out).toContain('is outside its limits, 28.6 mg under target');
  });
  test('refuses: trial data pass no test', async () => {
    const path = file(Array.from({ length: 20 }, (_, i) => `${429 + (i % 3)},0 mg`).join('\n'));
    const { code, judgement } = await judgementOf(path, '--basis', 'net', '--test', 'uniformity-of-mass');
    expect(judgement.tests[0]).toMatchObject({ verdict: 'cannot-tell', reasons: ['trial-data'], wouldBe: 'pass' });
    expect(code).toBe(1);
  });
  test.each([
    [[], 'Name the file with the weights'],
    [['w.csv', '--unit', 'oz'], '--unit "oz" is not known: take one of mg, g'],
    [['w.csv', '--test', 'tablets'], '--test "tablets" is not known'],
    [['w.csv', '--target_mg', '1.053,2'], 'without marks for thousands'],
    [['w.csv', '--target_mg', '-5'], '--target_mg'],
    [['w.csv', '--purpose', 'any'], '--purpose "any" is not known'],
    [['-', '--shells', '-'], 'Standard input can be read once'],
  ])('refuses: %j', async (args, sentence) => {
    const { code, problem } = await accept(...args);
    expect(code).toBe(2);
    expect(problem).toContain(sentence);
  });
  test.each([
    ['', 'No weights were found'],
    ['527.9\n530', 'No unit is written: say mg or g'],
    ['527.9 mg\n0.5301 g', 'Line 2: g stands in a column of mg'],
    ['NaN mg\ninf mg\n1e400 mg', 'line 1 "NaN mg": no value'],
    ['1.053,2 mg', 'line 1 "1.053,2 mg": may hold a thousands mark'],
    ['430 mg\n430 mg\n430 mg', 'Line 2: all 3 values are 430 mg'],
  ])('refuses: the text %j', async (text, sentence) => {
    const { code, problem } = await accept(file(text));
    expect(code).toBe(2);
    expect(problem).toContain(sentence);
  });
  test.each([
    [['--revolution'], '--revolution needs the wheel'],
    [['--set-up', '1'], 'name the brief with --brief'],
    [['--target_mg', '430', '--mean-action_pct', '3'], 'Limits come in pairs'],
    [['--individual-action_pct', '7.5', '--mean-action_pct', '3'], 'give --target_mg'],
  ])('refuses: %j without what it needs', async (args, sentence) => {
    const { code, problem } = await accept(file('527.9 mg\n530 mg'), ...args);
    expect(code).toBe(2);
    expect(problem).toContain(sentence);
  });
  test.each([
    ['mean wider than single', ['--mean-action_pct', '8', '--individual-action_pct', '3'], 'meanAction_pct, value 8'],
    [
      'alert beyond action',
      ['--mean-action_pct', '3', '--individual-action_pct', '7.5', '--individual-alert_pct', '9'],
      'individualAlert_pct, value 9',
    ],
  ])('refuses: limits that exclude each other, %s', async (_, limits, sentence) => {
    const { code, problem } = await accept(file('430 mg\n431 mg'), '--basis', 'net', '--target_mg', '430', ...limits);
    expect(code).toBe(2);
    expect(problem).toContain(sentence);
  });
  test('refuses: a gross weight that is not above its shell, by row and value', async () => {
    const { code, problem } = await accept(file('527.9 mg\n90 mg'), '--shells', file('97 mg\n98 mg'));
    expect(code).toBe(2);
    expect(problem).toMatch(/row 2, .*value 90; allowed: above 97.5/);
  });
  test('refuses: pairs with a shell missing', async () => {
    const { code, problem } = await accept(file('gross (mg);shell (mg)\n527,9;97,1\n528,1;'), '--own-shells');
    expect(code).toBe(2);
    expect(problem).toContain('Line 3: the shell weight is missing');
  });
  test('golden: a total at the foot of the column is struck: 430 + 431 = 861', async () => {
    const { out } = await accept(file('430 mg\n431 mg\n861 mg'), '--basis', 'net');
    expect(out).toContain('line 3 "861 mg": a total or mean');
    expect(out).toContain('2 weights, 1 struck');
  });
  test('refuses: one weight and three pass no limit', async () => {
    const limits = ['--target_mg', '430', '--mean-action_pct', '3', '--individual-action_pct', '7.5'];
    for (const text of ['430 mg', '429 mg\n430 mg\n431 mg']) {
      const { code, out } = await accept(file(text), '--basis', 'net', ...limits);
      expect(code).toBe(1);
      expect(out).toContain('Verdict: cannot tell, as trial.');
    }
  });
  test('refuses: one revolution is no sample of the lot, whatever it is called', async () => {
    const { judgement } = await judgementOf(
      example('alder-200-revolution.txt'),
      ...SHELLS,
      ...BRIEF,
      '--revolution',
      '--purpose',
      'release',
    );
    expect(judgement.tests.map(({ verdict, reasons }) => [verdict, reasons])).toEqual(
      judgement.tests.map(() => ['cannot-tell', ['one-revolution']]),
    );
    expect(judgement.verdict).toBe('fail');
  });
  test('refuses: shells with a line that cannot be read, named with row, value and what to do', async () => {
    const { code, problem } = await accept(file('527.9 mg\n530 mg'), '--shells', file('97,1 mg\n1.097,2 mg'));
    expect(code).toBe(2);
    expect(problem).toContain('line 2 "1.097,2 mg": may hold a thousands mark; write it without');
  });
  test('refuses: a file that is not there: exit code 3', async () => {
    expect((await accept(join(folder, 'none.csv'))).code).toBe(3);
    expect((await accept(file('527.9 mg'), '--shells', join(folder, 'none.csv'))).code).toBe(3);
  });
});

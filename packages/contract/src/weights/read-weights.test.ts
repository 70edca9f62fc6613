import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readWeights } from './read-weights.ts';
import type { WeightsRead } from './weights-read.ts';

const reasons = ({ lines }: WeightsRead): string[] =>
  lines.map((line) => (line.kind === 'struck' ? line.reason : String(line.mass_mg)));
const codes = ({ faults }: WeightsRead): string[] => faults.map(({ code }) => code);
const masses = ({ capsules }: WeightsRead): number[] => capsules.map(({ mass_mg }) => mass_mg);

// Expected values are read by eye from the texts.
describe('readWeights', () => {
  test('golden: a printout of a balance keeps every line, strikes what is no weight, and says why', () => {
    const text = [
      ...['Alder 200', 'Balance 3', 'G   527,9 mg', 'G 509,0 mg', 'Mean 2  518,4', 'G  ---,-  mg', 'G  1.053,2 mg'],
      ...['G 524,1 mg ?', '', 'G -5,0 mg', 'G 5 oz', 'G 531,0 mg recheck'],
    ];
    const read = readWeights({ text: text.join('\r\n') });
    expect(read.lines.map(({ raw }) => raw)).toEqual(text);
    expect(reasons(read)).toEqual([
      ...['heading', 'heading', '527.9', '509', 'total-or-mean', 'no-value', 'thousands-mark', 'unstable', 'blank'],
      ...['not-positive', 'unit-not-known', 'not-clear'],
    ]);
    expect(read).toMatchObject({ faults: [], basis: 'gross', unit: 'mg', unreadCount: 5 });
    expect(read.capsules).toEqual([
      { mass_mg: 527.9, line: 3 },
      { mass_mg: 509, line: 4 },
    ]);
  });
  test.each([
    ['12,5', 12.5],
    ['12.5', 12.5],
    ['0527,9', 527.9],
    ['527,9mg', 527.9],
    ['+  527.9 mg', 527.9],
    ['"527,9"', 527.9],
    ['14:02 527.9', 527.9],
    ['2026-03-02 14:02:10 527.9', 527.9],
    ['527.912', 527.912],
    ['5.279E+02', 527.9],
    ['N  430,9 mg', 430.9],
  ])('golden: "%s" is %s mg', (text, mass_mg) => {
    expect(masses(readWeights({ text, unit: 'mg' }))).toEqual([mass_mg]);
  });
  test.each(['1.053,2', '1,053.2', '1 053,2', '1\u00a0053,2', '1\u202f053,2', "1'053.2", '1,053', '1.053', '12,345'])(
    'refuses: "%s" may hold a thousands mark',
    (text) => {
      const read = readWeights({ text: `530,0\n${text}`, unit: 'mg' });
      expect(reasons(read)).toEqual(['530', 'thousands-mark']);
      expect(read.unreadCount).toBe(1);
    },
  );
  test('golden: grams move the point and nothing else; 1.053 g has no thousands', () => {
    expect(masses(readWeights({ text: '0.5279 g\n1.053 g\n0,5283 g' }))).toEqual([527.9, 1053, 528.3]);
  });
  test('golden: numbers that count the capsules are no second value', () => {
    expect(masses(readWeights({ text: '1 527.9\n2 531.0\n\n4 533', unit: 'mg' }))).toEqual([527.9, 531, 533]);
    expect(masses(readWeights({ text: 'capsule 7  527.9 mg' }))).toEqual([527.9]);
  });
  test('refuses: two unnamed columns -> columns-not-clear, also when the first looks like a count', () => {
    expect(codes(readWeights({ text: '527.9\t97\n528\t96\n529\t98', unit: 'mg' }))).toEqual(['columns-not-clear']);
  });
  test.each([
    ['', {}, ['no-weights']],
    ['Alder 200', {}, ['no-weights']],
    ['527.9', {}, ['unit-missing']],
    ['527.9 mg\n0.530 g', {}, ['units-mixed']],
    ['gross (mg)\n527.9\n0.530 g', {}, ['units-mixed']],
    ['gross (kg)\n527.9', { unit: 'mg' }, ['unit-not-known']],
    ['G 527.9 mg\nT 97.0 mg', {}, ['gross-and-net']],
    ['gross;net\n527.9;430.9', { unit: 'mg' }, ['gross-and-net']],
    ['gross;gross\n527.9;430.9', { unit: 'mg' }, ['columns-twice']],
    ['430\n430\n430', { unit: 'mg' }, ['all-equal']],
    ['gross mg;shell mg\n527;97\n528;', { shells: 'own' }, ['pair-incomplete']],
    ['527.9\n530', { unit: 'mg', wheel: { groupCount: 6, columnCount: 12 } }, ['not-a-revolution']],
  ] as const)('refuses: %j %j -> %j', (text, given, expected) => {
    const read = readWeights({ text, ...given });
    expect(codes(read)).toEqual(expected);
    expect(read.capsules).toEqual([]);
  });
  test('refuses: more lines than are read', () => {
    expect(codes(readWeights({ text: '1\n'.repeat(100_001), unit: 'mg' }))).toEqual(['too-many-lines']);
  });
  test('golden: columns by heading, in any order, with places, own shells and a mean line', () => {
    const text =
      'no;shell_mg;group;column;Gross (mg);remark\n1;97,1;1;1;527,9;\n2;96,4;1;2;530,0;ok\nMean;96,8;;;529,0;';
    const read = readWeights({ text });
    expect(read.capsules).toEqual([
      { mass_mg: 527.9, shell_mg: 97.1, place: { group: 1, column: 1 }, line: 2 },
      { mass_mg: 530, shell_mg: 96.4, place: { group: 1, column: 2 }, line: 3 },
    ]);
    expect(reasons(read)).toEqual(['heading', '527.9', '530', 'total-or-mean']);
    expect(read.ignoredColumns).toEqual(['remark']);
  });
  test('golden: a column of shells of another length is a population; the caller may say so of any', () => {
    const text = 'gross mg\tshell mg\n527.9\t97.1\n530.0\t96.4\n\t97.0';
    expect(readWeights({ text })).toMatchObject({ shells_mg: [97.1, 96.4, 97] });
    const pairs = 'gross mg\tshell mg\n527.9\t97.1\n530.0\t96.4';
    expect(readWeights({ text: pairs }).shells_mg).toEqual([]);
    expect(readWeights({ text: pairs, shells: 'of-the-lot' })).toMatchObject({
      capsules: [
        { mass_mg: 527.9, line: 2 },
        { mass_mg: 530, line: 3 },
      ],
      shells_mg: [97.1, 96.4],
    });
  });
  test('golden: commas part columns only under headings parted by commas', () => {
    const read = readWeights({ text: 'gross_mg,shell_mg\n527.9,97.1\n"528,1",97.0\n527,9,97,1' });
    expect(masses(read)).toEqual([527.9, 528.1]);
    expect(reasons(read).at(-1)).toBe('two-values');
    const titled = readWeights({ text: 'empty shells, lot B\nshell (mg)\n98,8\n95,5', basis: 'shell' });
    expect(titled.shells_mg).toEqual([98.8, 95.5]);
  });
  test('refuses: a place that is no whole number from 1', () => {
    const read = readWeights({ text: 'group\tcolumn\tgross mg\n1\t0\t527.9\n1\tx\t528.0\n1\t1\t529' });
    expect(reasons(read)).toEqual(['heading', 'place-not-clear', 'place-not-clear', '529']);
  });
  test('golden: a revolution by order runs group after group', () => {
    const text = [1, 2, 3, 4, 5, 6].map((i) => `52${i}`).join('\n');
    const read = readWeights({ text, unit: 'mg', wheel: { groupCount: 2, columnCount: 3 } });
    expect(read.capsules[3]).toEqual({ mass_mg: 524, line: 4, place: { group: 2, column: 1 } });
  });
  test.each(['#DIV/0!', '#N/A', 'NaN', '---', 'err'])('golden: %s is no value', (text) => {
    expect(reasons(readWeights({ text: `530\n${text}`, unit: 'mg' }))).toEqual(['530', 'no-value']);
  });
  test('golden: a value far from all others is pointed at, not struck', () => {
    const read = readWeights({ text: '527\n529\n52.8\n531', unit: 'mg' });
    expect(read.lines.map((line) => line.kind === 'weight' && line.isFar)).toEqual([false, false, true, false]);
    expect(read.capsules).toHaveLength(4);
  });
  test('property: any text gives one line for each of its lines, as it came, and never a mass that is no number above 0', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.string(), fc.stringMatching(/^[0-9 .,;\tmgGNT?-]{0,12}$/)), { maxLength: 12 }),
        (texts) => {
          const lines = texts.map((text) => text.replace(/[\r\n\uFEFF]/g, ' '));
          const read = readWeights({ text: lines.map((line) => `${line}\n`).join(''), unit: 'mg' });
          expect(read.lines.map(({ raw }) => raw)).toEqual(lines);
          for (const { mass_mg } of read.capsules) expect(mass_mg > 0 && Number.isFinite(mass_mg)).toBe(true);
        },
      ),
      { seed: 1 },
    );
  });
  test('property: comma or point, mg or g, the same masses', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1000, max: 99_999 }), { minLength: 1, maxLength: 30 }), (tenths) => {
        const points = tenths.map((tenth) => `${(tenth / 10).toFixed(1)} mg`).join('\n');
        const grams = tenths.map((tenth) => `${(tenth / 10_000).toFixed(4)} g`).join('\n');
        const expected = tenths.map((tenth) => tenth / 10);
        expect(masses(readWeights({ text: points }))).toEqual(expected);
        expect(masses(readWeights({ text: points.replaceAll('.', ',') }))).toEqual(expected);
        expect(masses(readWeights({ text: grams }))).toEqual(expected);
      }),
      { seed: 1 },
    );
  });
});

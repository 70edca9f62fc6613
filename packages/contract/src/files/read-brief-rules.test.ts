import { describe, expect, test } from 'vitest';
import { readBrief, type BriefRead } from './read-brief.ts';

/** A brief with one target and one material, both as flow mappings so that a row of a table can replace them whole. */
function briefOf(parts: {
  readonly target?: string;
  readonly material?: string;
  readonly shells?: string;
  readonly rest?: string;
}): string {
  return `format: 1
product: { code: FW-X02, name: Ash 90 }
parts:
  - name: blend
    dose: powder
    target: ${parts.target ?? FIXED}
    material: ${parts.material ?? '{ bulkDensity_g_per_mL: 0.5, tappedDensity_g_per_mL: 0.64 }'}
shells: ${parts.shells ?? "[{ size: '1' }]"}
filler: generic
${parts.rest ?? LIMITS}
`;
}
const FIXED = '{ rule: fixed-fill, fill_mg: 300, substances: [{ name: ash, claim_mg: 90 }] }';
const LIMITS = `inProcess: { meanAction_pct: 3, individualAction_pct: 7.5 }
route: [{ test: uniformity-of-mass, use: release }]`;

function read(text: string, files: Readonly<Record<string, string>> = {}): Promise<BriefRead> {
  const readText = (path: string): Promise<string> => {
    const found = path === 'a.brief.yaml' ? text : files[path];
    return found === undefined ? Promise.reject(new Error(path)) : Promise.resolve(found);
  };
  return readBrief({ path: 'a.brief.yaml', readText });
}

async function found(text: string, files?: Readonly<Record<string, string>>): Promise<readonly object[]> {
  const result = await read(text, files);
  return result.ok ? [] : result.faults.map(({ file, line, column, allowed, ...fault }) => fault);
}

const powder = (more: string, densities = 'bulkDensity_g_per_mL: 0.5, tappedDensity_g_per_mL: 0.64'): string =>
  briefOf({ material: `{ ${densities}, ${more} }` });
const MATERIAL = 'parts.0.material';
const TARGET = 'parts.0.target';

describe('readBrief: rules between values', () => {
  test('limit: the brief of the rows below is in order', async () => {
    expect(await found(briefOf({}))).toEqual([]);
  });

  test.each<[string, string, object]>([
    // tapped density below poured: tapping cannot loosen a powder (Ph. Eur. 2.9.34, from memory)
    [
      'tapped below poured',
      briefOf({ material: '{ bulkDensity_g_per_mL: 0.64, tappedDensity_g_per_mL: 0.5 }' }),
      {
        field: `${MATERIAL}.tappedDensity_g_per_mL`,
        rule: 'tapped-below-bulk',
        facts: { tapped_g_per_mL: 0.5, bulk_g_per_mL: 0.64 },
      },
    ],
    [
      'feed density below half the poured',
      powder('feedDensity_g_per_mL: 0.24'),
      {
        field: `${MATERIAL}.feedDensity_g_per_mL`,
        rule: 'feed-density-implausible',
        facts: { feed_g_per_mL: 0.24, lowest_g_per_mL: 0.25, highest_g_per_mL: 1.024 },
      },
    ],
    [
      'feed density above 1.6 x tapped',
      powder('feedDensity_g_per_mL: { mean: 1.03, sd: 0.01, n: 3 }'),
      {
        field: `${MATERIAL}.feedDensity_g_per_mL`,
        rule: 'feed-density-implausible',
        facts: { feed_g_per_mL: 1.03, lowest_g_per_mL: 0.25, highest_g_per_mL: 1.024 },
      },
    ],
    [
      'true density below tapped',
      powder('trueDensity_g_per_mL: 0.6'),
      {
        field: `${MATERIAL}.trueDensity_g_per_mL`,
        rule: 'true-below-tapped',
        facts: { true_g_per_mL: 0.6, tapped_g_per_mL: 0.64 },
      },
    ],
    // Kawakita: the reduction tends to a, so the density to 0.36 / (1 - 0.25) = 0.48 (by hand)
    [
      'a law that ends below the feed density',
      powder(
        'feedDensity_g_per_mL: 0.54, compression: { law: kawakita, a_frac: 0.25, b_per_MPa: 1, initialDensity_g_per_mL: 0.36 }',
      ),
      {
        field: `${MATERIAL}.compression.a_frac`,
        rule: 'compression-ends-below-feed',
        facts: { end_g_per_mL: 0.48, feed_g_per_mL: 0.54 },
      },
    ],
    [
      'a slug no denser than the feed',
      powder(
        'feedDensity_g_per_mL: 0.54, compression: { law: one-pair-by-force, density_g_per_mL: 0.54, force_N: 50 }',
      ),
      {
        field: `${MATERIAL}.compression.density_g_per_mL`,
        rule: 'pair-below-feed',
        facts: { pair_g_per_mL: 0.54, feed_g_per_mL: 0.54 },
      },
    ],
    // 200 x 1.12 / (0.992 x 0.985) = 229.245 mg, by hand; with 50 mg of excipients more than 270 mg
    [
      'substances and excipients above the total',
      briefOf({
        target:
          '{ rule: fixed-total, total_mg: 270, otherExcipients_mg: 50, substances: [{ name: ash, claim_mg: 200, saltFactor_ratio: 1.12, assayAnhydrous_pct: 99.2, water_pct: 1.5 }] }',
      }),
      {
        field: `${TARGET}.total_mg`,
        rule: 'substances-above-total',
        facts: { total_mg: 270, substances_mg: expect.closeTo(229.245, 3) as number, otherExcipients_mg: 50 },
      },
    ],
    [
      'a claim above the fill',
      briefOf({
        target: '{ rule: fixed-fill, fill_mg: 100, substances: [{ name: ash, claim_mg: 90, saltFactor_ratio: 1.2 }] }',
      }),
      { field: `${TARGET}.fill_mg`, rule: 'claim-above-fill', facts: { fill_mg: 100, needed_mg: 108 } },
    ],
    [
      'follows names no substance',
      briefOf({
        target: '{ rule: follows-assay, follows: asch, substances: [{ name: ash, claim_mg: 90, blendLoad_pct: 30 }] }',
      }),
      { field: `${TARGET}.follows`, rule: 'follows-unknown', value: 'asch', nearest: 'ash', facts: { names: 'ash' } },
    ],
    [
      'a substance twice',
      briefOf({
        target:
          '{ rule: fixed-fill, fill_mg: 300, substances: [{ name: ash, claim_mg: 9 }, { name: ash, claim_mg: 8 }] }',
      }),
      { field: `${TARGET}.substances.1.name`, rule: 'substance-twice', facts: { name: 'ash' } },
    ],
    // size 4: 210 + 10 mm3 in the table of sizes, times 3 mg/mm3 = 660 mg, by hand
    [
      '1200 mg in size 4',
      briefOf({ target: FIXED.replace('300', '1200'), shells: "[{ size: '4' }, { size: '5' }]" }),
      {
        field: TARGET,
        rule: 'target-above-body',
        facts: { target_mg: 1200, most_mg: 660, size: '4', volume_mm3: 220, density_g_per_mL: 3 },
      },
    ],
    [
      'more than the solid itself',
      briefOf({
        target: FIXED.replace('300', '340'),
        shells: "[{ size: '4' }]",
        material: '{ bulkDensity_g_per_mL: 0.5, tappedDensity_g_per_mL: 0.64, trueDensity_g_per_mL: 1.5 }',
      }),
      {
        field: TARGET,
        rule: 'target-above-body',
        facts: { target_mg: 340, most_mg: 330, size: '4', volume_mm3: 220, density_g_per_mL: 1.5 },
      },
    ],
    [
      'a size twice',
      briefOf({ shells: "[{ size: '1' }, { size: '1', lot: B }]" }),
      { field: 'shells.1.size', rule: 'shell-twice', facts: { size: '1' } },
    ],
    [
      'two parts',
      briefOf({}).replace(
        'shells:',
        `  - { name: second, dose: powder, target: ${FIXED}, material: { bulkDensity_g_per_mL: 0.5, tappedDensity_g_per_mL: 0.64 } }\nshells:`,
      ),
      { field: 'parts', rule: 'one-part-only', facts: { partCount: 2 } },
    ],
    [
      'alert above action',
      briefOf({ rest: LIMITS.replace('7.5', '7.5, individualAlert_pct: 8') }),
      { field: 'inProcess.individualAlert_pct', rule: 'alert-above-action', facts: { alert_pct: 8, action_pct: 7.5 } },
    ],
    [
      'the same test twice',
      briefOf({ rest: LIMITS.replace(' }]', ' }, { test: uniformity-of-mass, use: release }]') }),
      { field: 'route.1', rule: 'test-twice', facts: { test: 'uniformity-of-mass (release)' } },
    ],
    [
      'a range upside down',
      briefOf({ rest: `${LIMITS}\nvalidated: { discHeight: { min_mm: 18, max_mm: 14 } }` }),
      { field: 'validated.discHeight', rule: 'range-upside-down', facts: { min_mm: 18, max_mm: 14 } },
    ],
  ])('refuses: %s', async (...[, text, expected]) => {
    expect(await found(text)).toEqual([{ code: 'conflict', ...expected }]);
  });

  test.each<[string, string, object]>([
    [
      'an overage without reason',
      'overage: { amount_pct: 2, reference: x }',
      { code: 'missing', field: `${TARGET}.substances.0.overage.reason` },
    ],
    [
      'an overage without reference',
      'overage: { amount_pct: 2, reason: x }',
      { code: 'missing', field: `${TARGET}.substances.0.overage.reference` },
    ],
    [
      'an overage that is a number',
      'overage_pct: 2',
      { code: 'unknown-field', field: `${TARGET}.substances.0.overage_pct`, value: '2', nearest: 'overage' },
    ],
  ])('refuses: %s', async (...[, text, expected]) => {
    const target = FIXED.replace('claim_mg: 90', `claim_mg: 90, ${text}`);
    expect(await found(briefOf({ target }))).toEqual([expected]);
  });

  test.each<[string, string, object]>([
    [
      'no load to follow',
      '{ rule: follows-assay, substances: [{ name: ash, claim_mg: 90 }] }',
      { field: `${TARGET}.substances.0.blendLoad_pct` },
    ],
    [
      'two substances and none to follow',
      '{ rule: follows-assay, substances: [{ name: ash, claim_mg: 9, blendLoad_pct: 3 }, { name: elm, claim_mg: 9 }] }',
      { field: `${TARGET}.follows` },
    ],
  ])('refuses: %s', async (...[, target, expected]) => {
    expect(await found(briefOf({ target }))).toEqual([{ code: 'missing', ...expected }]);
  });

  test('refuses: a shell file of another size', async () => {
    const files = { 'b.shell.yaml': "format: 1\nsize: '2'\nsource: own\n" };
    expect(await found(briefOf({ shells: "[{ size: '1', record: b.shell.yaml }]" }), files)).toEqual([
      { code: 'conflict', field: 'shells.0.size', rule: 'record-of-other-size', facts: { size: '1', inFile: '2' } },
    ]);
  });
  test('limit: a size of its own name is known by its file', async () => {
    const files = { 'b.shell.yaml': 'format: 1\nsize: house 1\nsource: own\nbodyVolume_mm3: 480\n' };
    expect(await found(briefOf({ shells: '[{ size: house 1, record: b.shell.yaml }]' }), files)).toEqual([]);
  });
  test('limit: a target is not judged by volumes that are not known', async () => {
    const files = { 'b.shell.yaml': 'format: 1\nsize: house 4\nsource: own\n' };
    const text = briefOf({
      target: FIXED.replace('300', '1200'),
      shells: "[{ size: '4' }, { size: house 4, record: b.shell.yaml }]",
    });
    expect(await found(text, files)).toEqual([]);
  });
  test('limit: equal alert and action, range of one point, feed density at both ends are in order', async () => {
    const rest = `${LIMITS.replace('7.5', '7.5, individualAlert_pct: 7.5')}\nvalidated: { pinDepth: { min_mm: 3, max_mm: 3 } }`;
    expect(await found(briefOf({ rest }))).toEqual([]);
    expect(await found(powder('feedDensity_g_per_mL: 0.25'))).toEqual([]);
    expect(await found(powder('feedDensity_g_per_mL: 1.024'))).toEqual([]);
  });
  test('limit: a value that is refused by itself is not compared with others', async () => {
    const faults = await found(briefOf({ material: '{ bulkDensity_g_per_mL: 50, tappedDensity_g_per_mL: 0.64 }' }));
    expect(faults).toEqual([{ code: 'out-of-range', field: `${MATERIAL}.bulkDensity_g_per_mL`, value: '50' }]);
  });

  describe('notices', () => {
    // Ph. Eur. 2.9.40 and ICH Q4B Annex 6, table 1: mass variation from 25 mg and 25 % of the contents on (from memory)
    test.each([
      [24.9, 90, 1],
      [25, 100, 0],
      [25, 101, 1],
      [24, 24, 1],
      [90, 300, 0],
    ])('golden: %s mg in %s mg by mass variation -> %s notices', async (...[claim_mg, fill_mg, count]) => {
      const target = `{ rule: fixed-fill, fill_mg: ${fill_mg}, substances: [{ name: ash, claim_mg: ${claim_mg} }] }`;
      const result = await read(
        briefOf({ target, rest: LIMITS.replace('uniformity-of-mass', 'dosage-units-by-mass') }),
      );
      expect(result).toMatchObject({ ok: true, notices: { length: count } });
    });
    test('limit: other tests give no notice', async () => {
      const target = '{ rule: fixed-fill, fill_mg: 300, substances: [{ name: ash, claim_mg: 1 }] }';
      expect(await read(briefOf({ target }))).toMatchObject({ ok: true, notices: [] });
    });
  });
});

import type { FileFault, InputFault } from '@fillwright/engine/catalogue';
import { DOCUMENT_RULES, type DocumentRule } from '@fillwright/engine/design';
import { describe, expect, test } from 'vitest';
import { documentFaultSentence, documentNoticeSentence, formatFaults } from './brief.ts';

/** The numbers that each rule comes with. */
const FACTS: Readonly<Record<DocumentRule, NonNullable<InputFault['facts']>>> = {
  'alert-above-action': { alert_pct: 8, action_pct: 7.5 },
  'bores-not-mapped': { columnCount: 6, boreCount: 3 },
  'claim-above-fill': { fill_mg: 100, needed_mg: 108 },
  'compression-ends-below-feed': { end_g_per_mL: 0.48, feed_g_per_mL: 0.54 },
  'feed-density-implausible': { feed_g_per_mL: 0.24, lowest_g_per_mL: 0.25, highest_g_per_mL: 1.024 },
  'follows-unknown': { names: 'ash' },
  'map-not-one-to-one': { columnCount: 3, boreCount: 3 },
  'mounted-twice': { kind: 'disc', first: 'D1' },
  'one-part-only': { partCount: 2 },
  'pair-below-feed': { pair_g_per_mL: 0.5, feed_g_per_mL: 0.54 },
  'part-number-twice': { number: 'D1' },
  'range-upside-down': { min_mm: 18, max_mm: 14 },
  'record-of-other-size': { size: '1', inFile: '2' },
  'shell-twice': { size: '1' },
  'shell-halves-disagree': {},
  'speeds-out-of-order': { slowest: 40, usual: 90, fastest: 80 },
  'stations-out-of-order': { station: 3, expected: 2 },
  'substance-twice': { name: 'ash' },
  'substances-above-total': { total_mg: 270, substances_mg: 229.2449856, otherExcipients_mg: 50 },
  'tapped-below-bulk': { tapped_g_per_mL: 0.5, bulk_g_per_mL: 0.64 },
  'target-above-body': { target_mg: 1200, most_mg: 660, size: '4', volume_mm3: 220, density_g_per_mL: 3 },
  'test-twice': { test: 'uniformity-of-mass (release)' },
  'true-below-tapped': { true_g_per_mL: 0.6, tapped_g_per_mL: 0.64 },
  'validated-outside-machine': { low_mm: 0, high_mm: 8.1, min_mm: 0, max_mm: 8 },
};

describe('documentFaultSentence', () => {
  test.each(DOCUMENT_RULES)('golden: %s is told with all its numbers', (rule) => {
    const sentence = documentFaultSentence({ code: 'conflict', field: 'a.b', value: 'asch', rule, facts: FACTS[rule] });
    expect(sentence).toMatch(/^a\.b: [^\s].*[^.\s]\.$/s);
    expect(sentence).not.toMatch(/unknown|undefined|NaN/);
    const numbers = Object.values(FACTS[rule]).filter((value) => typeof value === 'number');
    for (const value of numbers) expect(sentence).toContain(String(Number(value.toPrecision(5))));
  });
  test.each([
    ['tab-as-indent', 'a tab is used to indent; use spaces.'],
    ['empty-text', 'the file is empty; an example shows what belongs into it.'],
    [
      'flow-of-a-kind-nobody-thought-of',
      'The text cannot be read (flow of a kind nobody thought of); correct how it is written.',
    ],
    ['constructor', 'The text cannot be read (constructor); correct how it is written.'],
  ])('golden: text that is no YAML: %s', (rule, expected) => {
    expect(documentFaultSentence({ code: 'syntax', field: '', rule })).toBe(expected);
  });
  test.each<[InputFault, string]>([
    [
      { code: 'unit-missing', field: 'bulkDensity', nearest: 'bulkDensity_g_per_mL' },
      'bulkDensity does not say its unit; write the unit as part of the name: bulkDensity_g_per_mL.',
    ],
    [
      {
        code: 'unit-wrong',
        field: 'bulkDensity_kg_per_m3',
        nearest: 'bulkDensity_g_per_mL',
        facts: { converted: 0.5 },
      },
      'bulkDensity_kg_per_m3 has a unit that is not used here; convert the value and write bulkDensity_g_per_mL: 0.5.',
    ],
    [
      { code: 'quote-it', field: 'shells.0.size', value: '00' },
      'shells.0.size is 00 without quotation marks and would be read as a number; write "00".',
    ],
    [
      { code: 'duplicate-key', field: 'filler', facts: { firstLine: 26 } },
      'filler is given twice (first in line 26); keep one of them.',
    ],
  ])('golden: everything else is told as for other inputs', (fault, expected) => {
    expect(documentFaultSentence(fault)).toBe(expected);
  });
});

describe('documentNoticeSentence', () => {
  test('golden: says the numbers and whose decision it is', () => {
    const facts = { name: 'ash', claim_mg: 20, share_pct: 12.5, fill_mg: 160, leastClaim_mg: 25, leastShare_pct: 25 };
    const sentence = documentNoticeSentence({ code: 'mass-route-below-threshold', field: 'route.0', facts });
    expect(sentence).toContain('20 mg, 12.5 % of 160 mg');
    expect(sentence).toContain("is the dossier's");
  });
});

describe('formatFaults', () => {
  test('golden: one block a file, in the order of lines, clickable', () => {
    const faults: FileFault[] = [
      { code: 'missing', field: 'b', file: 'x.brief.yaml', line: 9, column: 3 },
      { code: 'missing', field: 'c', file: 'y.filler.yaml', line: 1, column: 1 },
      { code: 'missing', field: 'a', file: 'x.brief.yaml', line: 2, column: 5 },
      { code: 'missing', field: 'd', file: 'x.brief.yaml', line: 2, column: 1 },
    ];
    expect(formatFaults(faults)).toBe(
      [
        'x.brief.yaml:2:1 d is missing and has to be given.',
        'x.brief.yaml:2:5 a is missing and has to be given.',
        'x.brief.yaml:9:3 b is missing and has to be given.',
        '',
        'y.filler.yaml:1:1 c is missing and has to be given.',
      ].join('\n'),
    );
  });
  test('limit: a file that cannot be read has no line', () => {
    expect(formatFaults([{ code: 'file', field: '', value: 'x.brief.yaml', file: 'x.brief.yaml' }])).toBe(
      'x.brief.yaml: The file "x.brief.yaml" cannot be read; check that it exists and may be read.',
    );
    expect(formatFaults([])).toBe('');
  });
});

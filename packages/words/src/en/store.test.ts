import { describe, expect, test } from 'vitest';
import { auditSentence, storeSentence, type AuditFindingCode, type StoreTrouble } from './store.ts';

const PLACE = { place: '/data/fw', why: 'no such thing' };
/** Facts as the store gives them. */
const TROUBLES: Readonly<Record<StoreTrouble, Readonly<Record<string, string | number>>>> = {
  'backup-exists': { file: 'a.backup' },
  'backup-unreadable': { file: 'a.backup', why: 'ENOENT' },
  'backup-unwritable': { file: 'a.backup', why: 'ENOSPC' },
  closed: PLACE,
  foreign: { ...PLACE, found: 'letter.txt' },
  full: PLACE,
  garbled: PLACE,
  locked: { ...PLACE, process: '4711' },
  newer: { ...PLACE, found: 2, known: 1 },
  'no-answer': { ...PLACE, patience_s: 30 },
  'no-store': PLACE,
  'not-empty': { ...PLACE, versionCount: 3 },
  'read-only': PLACE,
  'two-stores': PLACE,
  unreachable: PLACE,
};
const FINDINGS: Readonly<Record<AuditFindingCode, Readonly<Record<string, string | number>>>> = {
  changed: { version: 2 },
  'cut-short': {},
  exchanged: { version: 2, was: 3 },
  'head-differs': { version: 2 },
  'head-missing': { version: 2 },
  'line-garbled': { line: 3 },
  'link-broken': { version: 2 },
  'list-differs': { version: 2 },
  'list-garbled': { line: 3 },
  'list-late': {},
  missing: { from: 2, to: 4 },
  'no-versions': {},
  unreadable: { version: 2, why: 'status' },
  'whole-differs': {},
};

describe('storeSentence', () => {
  test.each(Object.entries(TROUBLES))('golden: %s says where, and what to do, with all its facts', (code, facts) => {
    const sentence = storeSentence(code as StoreTrouble, facts);
    for (const name of ['place', 'file'].filter((each) => each in facts))
      expect(sentence).toContain(String(facts[name]));
    expect(sentence).not.toMatch(/unknown|undefined|cannot tell/);
    // What happened, and then what to do.
    expect(sentence.split(/[.;] /).length).toBeGreaterThanOrEqual(2);
    expect(sentence.endsWith('.') || sentence.endsWith('>.')).toBe(true);
  });
});

describe('auditSentence', () => {
  test.each(Object.entries(FINDINGS))('golden: %s names the document and all its facts', (code, facts) => {
    const sentence = auditSentence({ code: code as AuditFindingCode, document: 'here/brief/alder', facts });
    expect(sentence).toMatch(/^here\/brief\/alder: .*\.$/);
    for (const fact of Object.values(facts)) expect(sentence).toContain(String(fact));
  });
  test('limit: one missing version is named once', () => {
    expect(auditSentence({ code: 'missing', facts: { from: 3, to: 3 } })).toBe('version 3 is missing.');
  });
});

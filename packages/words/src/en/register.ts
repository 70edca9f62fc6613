import type { CaseVerdict } from '@fillwright/engine/catalogue';

/** Headings of a method's description. */
export const METHOD_WORDS = {
  equation: 'equation',
  inputs: 'inputs',
  outputs: 'outputs',
  source: 'source',
  validity: 'validity',
  restsOn: 'rests on',
  checkValues: 'check values',
  noCheckValues: 'none yet',
  example: 'example',
  optional: 'may be left out',
  mayBeAbsent: 'absent where there is none',
  in: (unit: string): string => (unit === '1' ? 'pure number' : `in ${unit}`),
  kinds: { flag: 'true | false', text: 'text', group: 'values by name' },
  listOf: (least: number, most: number): string => `${least} to ${most} values`,
  absent: 'none',
} as const;

/** How a verdict is printed. */
export const VERDICT_WORDS: Readonly<Record<CaseVerdict, string>> = {
  pass: 'pass',
  fail: 'FAIL',
  'cannot-tell': 'CANNOT TELL',
  disputed: 'disputed',
};

/** Headings and sentences of the qualification report. */
export const REPORT_WORDS = {
  title: 'Qualification report: check values recomputed',
  columns: ['verdict', 'case', 'expected', 'got', 'deviation', 'tolerance', 'source'],
  item: (position: number): string => `value ${position}`,
  sources: 'sources',
  exactly: 'exact',
  notComputed: 'not computed',
  noCase: 'There is no check case to recompute.',
  unknownGroup: (group: string, known: readonly string[]): string =>
    `No case belongs to group "${group}"; the groups are ${known.join(', ')}.`,
  disputed: (why: string): string => `disputed: ${why}`,
  counts: (of: { total: number; pass: number; fail: number; cannotTell: number; disputed: number }): string =>
    `${of.total} ${of.total === 1 ? 'case' : 'cases'}: ${of.pass} pass, ${of.fail} fail, ${of.cannotTell} cannot tell, ${of.disputed} disputed`,
  more: (count: number): string => `... and ${count} more.`,
} as const;

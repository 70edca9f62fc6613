import { plainNumber } from '#numbers';

type Facts = Readonly<Record<string, string | number>>;
type Sentence = (fact: (name: string) => string) => string;

const KEPT = 'Everything that was confirmed before is kept';

/** What can be wrong with the place where documents are kept: what happened, what was kept, what to do. */
const TROUBLES = {
  'backup-exists': (fact) =>
    `${fact('file')} is already there and was not overwritten. Give the backup a name of its own.`,
  'backup-unreadable': (fact) =>
    `The backup ${fact('file')} cannot be read (${fact('why')}); the store was not touched. Check the name, or take another copy.`,
  'backup-unwritable': (fact) =>
    `The backup ${fact('file')} could not be written (${fact('why')}); the store is as it was. Choose a folder with room that may be written to.`,
  closed: (fact) => `The store in ${fact('place')} is closed. ${KEPT}; start the program again.`,
  foreign: (fact) =>
    `${fact('place')} holds ${fact('found')} and is no store of Fillwright; nothing in it was touched. Set FILLWRIGHT_DATA to an empty folder or to the folder of your store.`,
  full: (fact) =>
    `There is too little room for the store in ${fact('place')} (${fact('why')}); the last change was not kept. ${KEPT}. Free some room and try again.`,
  garbled: (fact) =>
    `The store in ${fact('place')} cannot be read (${fact('why')}); nothing in it was changed. Keep a copy of it as it is, then restore your last backup into an empty folder: fillwright restore <file>.`,
  locked: (fact) =>
    `The store in ${fact('place')} is already open in process ${fact('process')}; nothing was changed. End that program first, or go on there.`,
  newer: (fact) =>
    `The store in ${fact('place')} was written by a newer Fillwright (its form is ${fact('found')}, this program knows ${fact('known')}); nothing in it was changed. Install the newer program.`,
  'no-answer': (fact) =>
    `The store does not answer (disk full?): ${fact('place')} was silent for ${fact('patience_s')} s. ${KEPT}; whether the last change was, shows after a restart. Check the room on the disk and start the program again.`,
  'no-store': (fact) =>
    `There is no store in ${fact('place')}, and none was made. Set FILLWRIGHT_DATA to the folder of your store.`,
  'not-empty': (fact) =>
    `The store in ${fact('place')} already holds ${fact('versionCount')} versions and was not touched. Restore into an empty folder: set FILLWRIGHT_DATA to a new one.`,
  'read-only': (fact) =>
    `The store in ${fact('place')} may not be written to (${fact('why')}); nothing was changed. Ask for the right to write there, or set FILLWRIGHT_DATA to another folder.`,
  'two-stores': (fact) =>
    `${fact('place')} holds an embedded store, but DATABASE_URL names another one; nothing in either was changed. Set FILLWRIGHT_DATA to a new folder for this database, or unset DATABASE_URL.`,
  unreachable: (fact) =>
    `The database ${fact('place')} cannot be reached (${fact('why')}). ${KEPT}; whether the last change was, shows when it answers again. Check DATABASE_URL and that the server runs.`,
} as const satisfies Readonly<Record<string, Sentence>>;

/** Why a store cannot be used. */
export type StoreTrouble = keyof typeof TROUBLES;

/** What an audit can find. `from`, `to`, `version`: numbers of versions; `line`: of the list of heads. */
const FINDINGS = {
  changed: (fact) => `version ${fact('version')} was changed: its text or its heading does not give its hash.`,
  'cut-short': () => 'the end of the backup is missing; it was not written to its end.',
  exchanged: (fact) =>
    `version ${fact('version')} was exchanged: what stands there was kept as version ${fact('was')}.`,
  'head-differs': (fact) => `version ${fact('version')} is not the one that was noted as the newest.`,
  'head-missing': (fact) => `the note of the newest version is missing, although version ${fact('version')} is there.`,
  'line-garbled': (fact) => `line ${fact('line')} of the backup cannot be read.`,
  'link-broken': (fact) =>
    `version ${fact('version')} does not follow the version before it as it stands: one of the two was replaced.`,
  'list-differs': (fact) => `version ${fact('version')} is not the one that the list of heads names.`,
  'list-garbled': (fact) => `line ${fact('line')} of the list of heads cannot be read.`,
  'list-late': () =>
    'the list of heads is missing or was begun after the store, so that versions removed before cannot be noticed.',
  missing: (fact) =>
    fact('from') === fact('to')
      ? `version ${fact('from')} is missing.`
      : `versions ${fact('from')} to ${fact('to')} are missing.`,
  'no-versions': () => 'no version is kept yet, so there is nothing to verify.',
  unreadable: (fact) => `version ${fact('version')} is not in order: ${fact('why')}.`,
  'whole-differs': () => 'the backup was changed after it was written: its check sum differs.',
} as const satisfies Readonly<Record<string, Sentence>>;

/** What can be wrong with versions that are kept. */
export type AuditFindingCode = keyof typeof FINDINGS;

/**
 * Why a store cannot be used, as a person reads it.
 *
 * @param code - the trouble
 * @param facts - place and figures
 * @returns what happened, what was kept and what to do
 */
export function storeSentence(code: StoreTrouble, facts: Facts): string {
  return TROUBLES[code](told(facts));
}

/**
 * One thing that an audit found, as one line.
 *
 * @param finding - code, numbers, and the document it concerns, if it concerns one
 * @returns one line, which begins with kind and name of the document
 */
export function auditSentence(finding: {
  readonly code: AuditFindingCode;
  readonly document?: string;
  readonly facts: Facts;
}): string {
  const { code, document, facts } = finding;
  const text = FINDINGS[code](told(facts));
  return document === undefined ? text : `${document}: ${text}`;
}

/** What the commands about the store say. */
export const STORE_WORDS = {
  audited: (counts: { versionCount: number; chainCount: number }): string =>
    `${counted(counts)} verified: every hash, every order, every newest version.`,
  auditFailed: 'Nothing was changed. Keep the store as it is, and compare it with a backup.',
  cannotTell: 'Whether everything is still there cannot be told.',
  more: (count: number): string => `... and ${count} more.`,
  notText: 'The text holds a character that is none (NUL, or half of one); nothing was kept. Take it out.',
  noBase: (version: number): string =>
    `It is based on version ${version}, but no version is kept here; nothing was kept. Keep it as the first one.`,
  noDesign: (why: string): string => `The design is not in order: ${why}.`,
  noWeights: (why: string): string => `The sheet of weights is not in order: ${why}.`,
  backedUpUnsound: (file: string): string =>
    `${file} was written, but what is kept is not in order. Keep older backups, and look with fillwright audit verify.`,
  backedUp: (counts: { versionCount: number; chainCount: number }, file: string): string =>
    `${counted(counts)} written to ${file}, read back and verified.`,
  backupSound: (counts: { versionCount: number; chainCount: number }, file: string): string =>
    `${file} is complete: ${counted(counts)} verified. Nothing was changed.`,
  restored: (counts: { versionCount: number; chainCount: number }, place: string): string =>
    `${counted(counts)} restored into ${place}.`,
  backupUnsound: (file: string): string => `${file} is not in order and was not restored; the store was not touched.`,
} as const;

function counted({ versionCount, chainCount }: { versionCount: number; chainCount: number }): string {
  const versions = versionCount === 1 ? '1 version' : `${versionCount} versions`;
  return `${versions} of ${chainCount === 1 ? '1 document' : `${chainCount} documents`}`;
}

function told(facts: Facts): (name: string) => string {
  return (name) => {
    const value = facts[name];
    return typeof value === 'number' ? plainNumber(value, { upToSignificantDigits: 15 }) : (value ?? 'unknown');
  };
}

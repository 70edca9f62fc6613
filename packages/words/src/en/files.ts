/** What a file of ours is called by what it holds. */
const KINDS = { brief: 'a brief', filler: 'a filler', shell: 'a shell' } as const;
type Kind = keyof typeof KINDS;

const ENDINGS = 'a brief (*.brief.yaml), a filler (*.filler.yaml) or a shell (*.shell.yaml)';
const UNTOUCHED = 'Nothing was changed.';

/** Files that a person opens or drops, and the page of a filler or a shell. */
export const FILE_WORDS = {
  kinds: KINDS,
  notText: (name: string): string => `${name} is no text in UTF-8; expected is ${ENDINGS}. ${UNTOUCHED}`,
  tooLong: (name: string, most: string): string =>
    `${name} is longer than ${most} bytes, more than any of our files may have; expected is ${ENDINGS}. ${UNTOUCHED}`,
  unknown: (name: string): string => `${name} holds none of our files; expected is ${ENDINGS}. ${UNTOUCHED}`,
  contradicting: (name: string, called: Kind, holds: Kind): string =>
    `${name} ends like ${KINDS[called]} and holds ${KINDS[holds]}; give it the ending .${holds}.yaml and open it again. ${UNTOUCHED}`,
  notAsked: (of: { name: string; is: Kind; asked: Kind; file: string }): string =>
    `${of.name} is ${KINDS[of.is]}; expected here is ${KINDS[of.asked]}, the one that the brief calls ${of.file}. ${UNTOUCHED}`,
  onlyOne: (file: string): string => `Expected here is one file, the one that the brief calls ${file}. ${UNTOUCHED}`,
  twice: (name: string, file: string): string =>
    `${name} was not kept: another file of the same choice is called ${file} too. Rename one and open it again.`,
  newer: (name: string, file: string): string =>
    `${name} was not kept: somebody kept a newer ${file} at the same moment. Look at that one, then open yours again.`,
  notKept: (name: string, why: string): string => `${name} was not kept. ${why}`,
  silent: 'The server does not answer; open the file again when it does.',
  refused: (what: string): string => `The server refused it: ${what}`,
  kept: (of: { name: string; file: string; version: number; faultCount: number }): string =>
    [
      of.name === of.file ? `${of.file} is kept` : `${of.name} is kept under the name ${of.file}`,
      of.version === 1
        ? ' as version 1.'
        : ` as version ${of.version}; version ${of.version - 1} stays in its history.`,
      of.faultCount === 0
        ? ' It is in order.'
        : ` ${of.faultCount === 1 ? 'One thing has' : `${of.faultCount} things have`} to be corrected before a brief can use it.`,
    ].join(''),
  same: (of: { file: string; version: number }): string =>
    `${of.file} is kept already with this text, as version ${of.version}.`,
  openedFrom: (name: string): string => `opened from the file ${name}`,
  missing: (field: string, file: string): string =>
    `${field}: ${file} is not among the files opened here, or cannot be read at the moment; open it.`,
  openThis: (file: string): string => `Open ${file} …`,
  see: (file: string): string => `See ${file}`,
  named: 'Files it names',
  ofVersion: (file: string, version: number): string => `${file}, version ${version}`,
  ofExamples: (file: string): string => `${file}, of the examples`,
  savedText: (file: string): string => `Save ${file}`,
  saveFiles: 'Save as files',
  saveFilesNote: 'The brief and the files it names. Put them where the brief names them.',
  dropHere: 'Let go to open the files',
  listTitle: 'Your fillers and shells',
  listNote: 'A brief names them by their file name; the newest version counts.',
  keptAs: (of: { kind: Kind; version: number; status: 'draft' | 'saved'; at: string; by: string }): string =>
    `${KINDS[of.kind]}, version ${of.version}, ${of.status}, kept ${of.at} by ${of.by}`,
  optionOf: (title: string, file: string): string => `${title} (${file})`,
  exampleOf: (title: string): string => `${title}, an invented example`,
  otherPath: 'another file, by its path',
  about: {
    filler: 'A filler: carriers, disc, pins and scales, speeds, change parts in stock.',
    shell: 'A shell: one size as you measured it.',
  },
  usedBy: (file: string): string =>
    `Every brief that names ${file} uses the newest version; a kept design says which version it was computed from.`,
  toStart: 'All products',
  tabsLabel: 'Ways to see the file',
  state: 'State of the file',
  inOrder: 'The file is in order.',
  none: (file: string): string => `No ${file} is kept here. Open it, or look for it under another name.`,
  text: 'Text of the file',
  openAgain: 'Open the file again …',
  textHelp: 'Change it here or open the file again. Tab leaves the text; indent with spaces.',
  saveTitle: 'Save this version',
  saveButton: 'Save version',
  reason: 'Why it changes',
  reasonHelp: 'Kept with the version; at least three letters. What you type in the text is kept as a draft by itself.',
  saved: 'Saved.',
  notSaved: {
    offline: 'The server does not answer: your text is kept in this browser as a draft. Save it again when it does.',
    conflict: 'Somebody else kept a newer version: choose above.',
    refused: (why: string): string => `The server did not take it. ${why}`,
    trouble: (why: string): string => `${why} Your text is kept in this browser as a draft. Save it again then.`,
    'reason-needed': 'Give a reason, and save again.',
  },
} as const;

import type { FileDocument } from '@fillwright/contract/documents';
import { FILE_WORDS } from '@fillwright/words/en';
import { keepFile } from '../state/keep-file.ts';
import { faultsOfFile } from './faults-of-file.ts';
import { fileName } from './file-name.ts';
import { keepingProblem } from './problem-text.ts';
import { readTextFile } from './read-text-file.ts';
import { sortFile, type AskedFile } from './sort-file.ts';

/** What became of one file, as one sentence. */
export interface FileNote {
  readonly sentence: string;
  readonly isAttention: boolean;
  /** Where it is kept, and what a brief calls it. */
  readonly kept?: { readonly document: FileDocument; readonly called: string };
}

/** What became of files that were opened together. */
export interface OpenedFiles {
  /** Texts of the briefs among them: the page decides what becomes of them. */
  readonly briefs: readonly { readonly name: string; readonly text: string }[];
  /** One for every other file, in their order. */
  readonly notes: readonly FileNote[];
}

/**
 * Opens files: fillers and shells are kept, briefs are handed on.
 *
 * @param files - as a person chose or dropped them
 * @param asked - the one file that a brief asks for; left out: any files of ours
 * @returns the briefs, and what became of the others; never throws
 */
export async function openFiles(files: readonly File[], asked?: AskedFile): Promise<OpenedFiles> {
  if (asked && files.length > 1) return { briefs: [], notes: [attention(FILE_WORDS.onlyOne(asked.file))] };
  const briefs: { name: string; text: string }[] = [];
  const notes: FileNote[] = [];
  const names = new Set<string>();
  for (const file of files) {
    const read = await readTextFile(file);
    const sorted = read.ok ? await sortFile({ name: file.name, text: read.text }, asked) : undefined;
    if (!read.ok) notes.push(attention(read.sentence));
    else if (sorted?.is === 'brief') briefs.push({ name: file.name, text: read.text });
    else if (sorted?.is === 'refused') notes.push(attention(sorted.sentence));
    else if (sorted) {
      const { document, called } = sorted;
      const isTwice = names.has(fileName(document));
      names.add(fileName(document));
      notes.push(
        isTwice
          ? attention(FILE_WORDS.twice(file.name, called))
          : await keep({ name: file.name, text: read.text, document, called }),
      );
    }
  }
  return { briefs, notes };
}

interface FileToKeep {
  readonly name: string;
  readonly text: string;
  readonly document: FileDocument;
  readonly called: string;
}

async function keep({ name, text, document, called: file }: FileToKeep): Promise<FileNote> {
  const where = { document, called: file };
  try {
    const { length: faultCount } = await faultsOfFile(document, text);
    const reason = FILE_WORDS.openedFrom(shortened(name));
    const kept = await keepFile(document, { text, isInOrder: faultCount === 0, reason });
    if (kept.kind === 'newer') return { ...attention(FILE_WORDS.newer(name, file)), kept: where };
    const { version } = kept;
    const sentence =
      kept.kind === 'same' ? FILE_WORDS.same({ file, version }) : FILE_WORDS.kept({ name, file, version, faultCount });
    return { sentence, isAttention: faultCount > 0, kept: where };
  } catch (error) {
    return attention(FILE_WORDS.notKept(name, keepingProblem(error)));
  }
}

/** Characters of a file name that go into the reason of a version. */
const LONGEST_NAME = 200;

function shortened(name: string): string {
  return name.slice(0, LONGEST_NAME).replace(/[\p{Cc}\p{Cs}]/gu, ' ');
}

function attention(sentence: string): FileNote {
  return { sentence, isAttention: true };
}

import type { DocumentVersionHead } from '@fillwright/contract/documents';
import { SHEET_WORDS } from '@fillwright/words/en';
import type { NamedFile, SaveState } from '../../state/index.ts';

/** Which document the pages are made from, for head and foot. */
export interface PageIdentity {
  /** `FW-D01, brief version 12`, and whether that is all of it. */
  readonly version: string;
  readonly status: string;
  readonly replaces: string;
  /** The fillers and shells it was computed from, by file and version; empty when the brief names none. */
  readonly files: string;
  /** First signs of the hash of that version, and the seed. */
  readonly marks: string;
}

interface KnownOfDocument {
  readonly save: SaveState;
  readonly head: DocumentVersionHead | undefined;
  readonly files: readonly NamedFile[];
  readonly seed: number;
}

const SHORT_SHA = 12;

/**
 * Names the version that is printed.
 *
 * @param code - of the product
 * @param known - what is kept of the text, the server's record of that version, the files it names, the seed
 * @returns words for head and foot; what is not confirmed is said so
 */
export function pageIdentity(code: string, known: KnownOfDocument): PageIdentity {
  const { save, head, files, seed } = known;
  const words = SHEET_WORDS;
  const version = save.kind === 'conflict' ? save.current.version : save.version;
  const status = head ? words.kept({ status: words.status[head.status], by: head.by }) : words.notKnown;
  const sha = head && save.kind === 'kept' ? words.sha(grouped(head.sha256.slice(0, SHORT_SHA))) : words.noSha;
  return {
    version: words.version({ code, version }),
    status: save.kind === 'kept' ? status : `${status} ${words.notKept}`,
    replaces: head && version > 1 ? words.replaces(version - 1) : '',
    files: words.files(files),
    marks: `${sha}, ${words.seed(seed)}`,
  };
}

function grouped(sha: string): string {
  return sha.replace(/(.{4})(?=.)/g, '$1 ');
}

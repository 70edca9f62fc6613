import { briefNotices, briefReferences, parseBrief, type Reference } from '#brief';
import type { Parsed, SourceDocument } from '#faults';
import type { FileFault, InputFault } from '@fillwright/engine/catalogue';
import type { Brief, DocumentNotice } from '@fillwright/engine/design';
import { GENERIC_FILLER, type Filler } from '@fillwright/engine/fillers';
import { findShellSize, type ShellRecord } from '@fillwright/engine/shells';
import { fileBeside } from './file-beside.ts';
import { readDocument, type FileToRead, type NotRead } from './read-document.ts';
import { readFiller } from './read-filler.ts';
import { readShell } from './read-shell.ts';

/** A brief with everything it names, or everything that is wrong with it and with the files it names. */
export type BriefRead =
  | {
      readonly ok: true;
      readonly brief: Brief;
      readonly filler: Filler;
      /** Figures of the shells, in the order of the brief. */
      readonly shells: readonly ShellRecord[];
      readonly notices: readonly DocumentNotice[];
    }
  | NotRead;

interface Beside {
  filler: Filler;
  readonly shells: Map<string, ShellRecord>;
  /** Faults of the text of the files beside the brief. */
  readonly faults: FileFault[];
}

/**
 * Reads a brief, and the filler and shell files it names, which stand beside it.
 *
 * @param input - the file
 * @returns the brief with its filler and shells, or all faults with their places
 */
export async function readBrief(input: FileToRead): Promise<BriefRead> {
  const beside: Beside = { filler: GENERIC_FILLER, shells: new Map(), faults: [] };
  const read = await readDocument(input, async (document): Promise<Parsed<Brief>> => {
    const missing = await readReferences(input, { document, beside });
    const parsed = parseBrief(document, beside.shells);
    if (missing.length === 0) return parsed;
    return { ok: false, faults: [...(parsed.ok ? [] : parsed.faults), ...missing] };
  });
  if (!read.ok) return { ...read, faults: [...read.faults, ...beside.faults] };
  if (beside.faults.length > 0) return { ok: false, kind: 'input', faults: beside.faults };
  const brief = read.value;
  const shells = brief.shells.flatMap(({ size, record }) => {
    const found = record === undefined ? findShellSize(size) : beside.shells.get(record);
    return found === undefined ? [] : [found];
  });
  return { ok: true, brief, filler: beside.filler, shells, notices: briefNotices(brief) };
}

/** Reads what the brief names into `beside`; a file that cannot be read is a fault of the brief, where it is named. */
async function readReferences(
  { path, readText }: FileToRead,
  { document, beside }: { document: SourceDocument; beside: Beside },
): Promise<readonly InputFault[]> {
  const missing: InputFault[] = [];
  const asked = new Set<string>();
  for (const reference of briefReferences(document.value)) {
    if (asked.has(reference.file)) continue;
    asked.add(reference.file);
    const file = fileBeside(path, reference.file);
    const outcome = await readReference(reference, { path: file, readText }, beside);
    if (outcome === 'unreadable')
      missing.push({ code: 'file', field: reference.path.map(String).join('.'), value: reference.file });
  }
  return missing;
}

async function readReference(
  { kind, file }: Reference,
  input: FileToRead,
  beside: Beside,
): Promise<'done' | 'unreadable'> {
  const read = kind === 'filler' ? await readFiller(input) : await readShell(input);
  if (!read.ok) {
    if (read.kind === 'file') return 'unreadable';
    beside.faults.push(...read.faults);
  } else if ('parts' in read.value) beside.filler = read.value;
  else beside.shells.set(file, read.value);
  return 'done';
}

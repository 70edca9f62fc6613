import type { DocumentVersion, FileDocument } from '@fillwright/contract/documents';
import { exampleText, listDocuments, newestVersion, ServerProblem } from './documents-client.ts';
import type { DocumentName } from './kept-texts.ts';

/** A filler or shell that a brief names, as it was read. */
export interface NamedFile extends FileDocument {
  /** Path as the brief names it, from its own folder. */
  readonly file: string;
  /** Version that was read; left out: the example of that name. */
  readonly version?: number;
  readonly text: string;
}

/** What was read last under each path, for as long as the server does not answer. */
const lastRead = new Map<string, NamedFile>();

/**
 * Reads a file that a brief names: the newest version that is kept under its name, else the example of that name. An
 * example never stands in for a kept file that could not be read. While the server does not answer, what was read before
 * counts, with the version it was.
 *
 * @param file - path as the brief names it
 * @returns text, and what was read
 * @throws ServerProblem when there is none, or the server does not answer and it was never read
 */
export async function namedFile(file: string): Promise<NamedFile> {
  try {
    const found = await askedFile(file);
    lastRead.set(file, found);
    return found;
  } catch (error) {
    const last = lastRead.get(file);
    if (last && error instanceof ServerProblem && error.status === 0) return last;
    throw error;
  }
}

async function askedFile(file: string): Promise<NamedFile> {
  const { fileDocument } = await import('@fillwright/contract/documents');
  const document = fileDocument(file);
  if (!document) throw new ServerProblem(404, {});
  const kept = await keptVersion(document);
  if (kept) return { ...document, file, version: kept.version, text: kept.text };
  return { ...document, file, text: await exampleText(file) };
}

/** @returns the newest version that is kept of a document; undefined when there is none. @throws ServerProblem */
export async function keptVersion({ kind, id }: DocumentName): Promise<DocumentVersion | undefined> {
  // Looked up in the list first: a file that only the examples have is usual, and no fault to be reported.
  return (await listDocuments(kind)).some((head) => head.id === id) ? newestVersion(kind, id) : undefined;
}

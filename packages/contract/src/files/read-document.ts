import type { Parsed, SourceDocument } from '#faults';
import type { FileFault } from '@fillwright/engine/catalogue';
import { yamlText } from './yaml-text.ts';

/** A file, and how texts are read; the path may be of anything that the reader understands. */
export interface FileToRead {
  readonly path: string;
  readonly readText: (path: string) => Promise<string>;
}

/** Wrong input, or `file`: a file that cannot be read at all. */
export interface NotRead {
  readonly ok: false;
  readonly kind: 'input' | 'file';
  readonly faults: readonly FileFault[];
}

/** The content of a file, or everything that is wrong with it. */
export type DocumentRead<T> = { readonly ok: true; readonly value: T } | NotRead;

/**
 * Reads one file of ours: its text, its YAML, its form.
 *
 * @param input - the file
 * @param parse - what makes data of the document
 * @returns the data, or all faults with their places
 */
export async function readDocument<T>(
  { path, readText }: FileToRead,
  parse: (document: SourceDocument) => Parsed<T> | Promise<Parsed<T>>,
): Promise<DocumentRead<T>> {
  let text: string;
  try {
    text = await readText(path);
  } catch {
    return { ok: false, kind: 'file', faults: [{ code: 'file', field: '', value: path, file: path }] };
  }
  const yaml = yamlText(text);
  const parsed: Parsed<T> = yaml.isReadable ? await parse(yaml) : { ok: false, faults: [] };
  if (parsed.ok && yaml.faults.length === 0) return parsed;
  const said = new Set(yaml.faults.map(({ field }) => field));
  const others = parsed.ok ? [] : parsed.faults.filter(({ field }) => field === '' || !said.has(field));
  const faults = [
    ...yaml.faults.map((fault) => ({ ...fault, file: path })),
    ...others.map((fault) => ({ ...fault, ...yaml.placeOf(fault.field), file: path })),
  ];
  return { ok: false, kind: faults.some(({ code }) => code === 'file') ? 'file' : 'input', faults };
}

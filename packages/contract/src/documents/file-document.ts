import { documentIdSchema, NAMED_KINDS, type NamedKind } from './document-schemas.ts';

/** Under which name a filler or a shell is kept. */
export interface FileDocument {
  readonly kind: NamedKind;
  readonly id: string;
}

/** Room for a dash and the marks of `marksOf` in an id. */
const LONGEST_SLUG: Characters = 70;
/** A number of characters, without unit. */
type Characters = number;

/**
 * The document that a file name stands for. Folders and capital letters do not count, so that `./two-shift.filler.yaml` of
 * a brief finds it wherever the file came from. A name that cannot be an id as it is gets marks made of the whole name
 * behind it: `pin+` and `pin-` are two files and stay two documents.
 *
 * @param path - name or path of a file, with either kind of slash
 * @param kind - what it holds, where that is known; left out: what its ending says
 * @returns kind and id; undefined when neither `kind` nor the ending says that it is a filler or a shell
 */
export function fileDocument(path: string, kind?: NamedKind): FileDocument | undefined {
  const name = (/[^/\\]*$/.exec(path)?.[0] ?? '').normalize('NFC').toLowerCase();
  const found = kind ?? NAMED_KINDS.find((each) => name.endsWith(`.${each}.yaml`));
  if (found === undefined) return undefined;
  return { kind: found, id: idOf(name.replace(/\.ya?ml$/, '').replace(new RegExp(`\\.${found}$`), '')) };
}

function idOf(name: string): string {
  if (documentIdSchema.safeParse(name).success) return name;
  const slug = name.replace(/[^a-z0-9]+/g, '-').slice(0, LONGEST_SLUG);
  return `${slug}-${marksOf(name)}`.replace(/-{2,}/g, '-').replace(/^-/, '');
}

/** Eight marks that differ where names differ. @source FNV-1a of 32 bits, draft-eastlake-fnv; offset and prime from memory */
function marksOf(name: string): string {
  const codes = Array.from({ length: name.length }, (_, at) => name.charCodeAt(at));
  let hash = 0x811c9dc5;
  for (const octet of codes.flatMap((code) => [code >> 8, code & 0xff])) hash = Math.imul(hash ^ octet, 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, '0');
}

import { briefSchema } from '#brief';
import { fillerSchema } from '#filler';
import { z } from 'zod';
import { shellSchema } from '#shell';
import { yamlText } from './yaml-text.ts';

const KINDS = ['brief', 'filler', 'shell'] as const;

/** What a file of ours holds. */
export type FileKind = (typeof KINDS)[number];

/** As many keys of a kind have to stand in a text before it is taken for one without the ending. */
const LEAST_KEYS: Count = 2;
/** A count; it has no unit. */
type Count = number;

/**
 * What a file is, by what stands in it and by the ending of its name.
 *
 * @param name - of the file
 * @param text - its text, in order or not
 * @returns its kind; `contradicting` when name and content are of two kinds; `unknown` when neither says what it is
 */
export function fileKind(
  name: string,
  text: string,
):
  | { readonly is: FileKind }
  | { readonly is: 'contradicting'; readonly called: FileKind; readonly holds: FileKind }
  | { readonly is: 'unknown' } {
  const called = KINDS.find((kind) => new RegExp(`\\.${kind}\\.ya?ml$`, 'i').test(name));
  const holds = kindOfKeys(text);
  if (called === undefined) return { is: holds ?? 'unknown' };
  return holds === undefined || holds === called ? { is: called } : { is: 'contradicting', called, holds };
}

/** The kind whose keys stand in the text more often than those of any other. */
function kindOfKeys(text: string): FileKind | undefined {
  const { value } = yamlText(text);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return undefined;
  const found = KINDS.map((kind) => {
    const known = knownKeys(kind);
    return { kind, count: Object.keys(value).filter((key) => known.has(key)).length };
  }).sort((a, b) => b.count - a.count);
  const [most, next] = found;
  if (!most || most.count < LEAST_KEYS || most.count === next?.count) return undefined;
  return most.kind;
}

const SCHEMAS: Readonly<Record<FileKind, z.ZodType>> = { brief: briefSchema, filler: fillerSchema, shell: shellSchema };
const KEYS = new Map<FileKind, ReadonlySet<string>>();

/** The keys at the top of a file of a kind, other than `format`, which stands in each; looked up once. */
function knownKeys(kind: FileKind): ReadonlySet<string> {
  const known = KEYS.get(kind);
  if (known) return known;
  const { properties = {} } = z.toJSONSchema(SCHEMAS[kind], { io: 'input' });
  const keys = new Set(Object.keys(properties).filter((key) => key !== 'format'));
  KEYS.set(kind, keys);
  return keys;
}

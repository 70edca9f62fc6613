import {
  designChoiceSchema,
  weightsSheetSchema,
  type DocumentVersion,
  type NewVersion,
} from '@fillwright/contract/documents';
import { readBrief, readFiller, readShell } from '@fillwright/contract/files';
import { documentFaultSentence, STORE_WORDS } from '@fillwright/words/en';
import { appendVersion } from '../store/append-version.ts';
import type { Store } from '../store/store.ts';
import type { DocumentName } from './document-name.ts';
import { HERE } from './here.ts';
import { namedText } from './named-text.ts';

/** What became of a version that was sent. */
export type SaveOutcome =
  | { readonly outcome: 'kept'; readonly version: DocumentVersion }
  /** A newer version is there than the one it was based on; nothing was kept. */
  | { readonly outcome: 'newer'; readonly current: DocumentVersion }
  /** A saved version is superseded without a reason; nothing was kept. */
  | { readonly outcome: 'reason-missing' }
  /** The text cannot be kept as it was sent: one sentence for each thing that is wrong with it. */
  | { readonly outcome: 'not-in-order'; readonly sentences: readonly string[] };

/**
 * Keeps a version. A draft may have faults, since nothing typed is to be lost; what is saved must be in order.
 *
 * @param store - the store
 * @param name - kind and id
 * @param sent - the version, and when: ISO 8601 in UTC
 * @returns the version when it has reached the disk, or why it was not kept
 * @throws StoreError when the store cannot do it
 */
export async function saveVersion(
  store: Store,
  name: DocumentName,
  sent: NewVersion & { readonly at: string },
): Promise<SaveOutcome> {
  const sentences = isPlainText(sent.text) ? await faultsOf(store, name, sent) : [STORE_WORDS.notText];
  if (sentences.length > 0) return { outcome: 'not-in-order', sentences };
  const appended = await appendVersion(store, { site: HERE, ...name }, sent);
  if (appended.outcome !== 'conflict') return appended;
  const { current } = appended;
  if (current) return { outcome: 'newer', current };
  return { outcome: 'not-in-order', sentences: [STORE_WORDS.noBase(sent.basedOn)] };
}

/** What no database keeps as text: NUL, and halves of a character (they stand for nothing in Unicode). */
function isPlainText(text: string): boolean {
  return !text.includes('\0') && !/\p{Surrogate}/u.test(text);
}

async function faultsOf(
  store: Store,
  { kind, id }: DocumentName,
  { status, text }: NewVersion,
): Promise<readonly string[]> {
  if (status === 'draft') return [];
  if (kind === 'design') return jsonFaults(text, { schema: designChoiceSchema, sentence: STORE_WORDS.noDesign });
  if (kind === 'weights') return jsonFaults(text, { schema: weightsSheetSchema, sentence: STORE_WORDS.noWeights });
  const path = `${id}.${kind}.yaml`;
  const readText = (asked: string): Promise<string> =>
    asked === path ? Promise.resolve(text) : namedText(store, asked);
  const read = await READERS[kind]({ path, readText });
  return read.ok ? [] : read.faults.map(documentFaultSentence);
}

const READERS = { brief: readBrief, filler: readFiller, shell: readShell } as const;

interface JsonForm {
  readonly schema: typeof designChoiceSchema | typeof weightsSheetSchema;
  readonly sentence: (what: string) => string;
}

function jsonFaults(text: string, { schema, sentence }: JsonForm): readonly string[] {
  let content: unknown;
  try {
    content = JSON.parse(text);
  } catch {
    return [sentence('it is no JSON')];
  }
  const parsed = schema.safeParse(content);
  if (parsed.success) return [];
  return parsed.error.issues.map(({ path, message }) => sentence(`${path.map(String).join('.')} ${message}`));
}

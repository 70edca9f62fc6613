import { designChoiceSchema, type DocumentVersion, type NewVersion } from '@fillwright/contract/documents';
import { readBrief } from '@fillwright/contract/files';
import { documentFaultSentence, STORE_WORDS } from '@fillwright/words/en';
import { appendVersion } from '../store/append-version.ts';
import type { Store } from '../store/store.ts';
import type { DocumentName } from './document-name.ts';
import { exampleText } from './example-text.ts';
import { HERE } from './here.ts';

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
  const sentences = isPlainText(sent.text) ? await faultsOf(name, sent) : [STORE_WORDS.notText];
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

async function faultsOf({ kind, id }: DocumentName, { status, text }: NewVersion): Promise<readonly string[]> {
  if (status === 'draft') return [];
  return kind === 'brief' ? briefFaults(`${id}.brief.yaml`, text) : designFaults(text);
}

/** A brief that is kept has no folder beside it: what it names is looked for among the files of the program. */
async function briefFaults(path: string, text: string): Promise<readonly string[]> {
  const readText = async (asked: string): Promise<string> => {
    const found = asked === path ? text : await exampleText(asked);
    if (found === undefined) throw new Error(asked);
    return found;
  };
  const read = await readBrief({ path, readText });
  return read.ok ? [] : read.faults.map(documentFaultSentence);
}

function designFaults(text: string): readonly string[] {
  let content: unknown;
  try {
    content = JSON.parse(text);
  } catch {
    return [STORE_WORDS.noDesign('it is no JSON')];
  }
  const parsed = designChoiceSchema.safeParse(content);
  if (parsed.success) return [];
  return parsed.error.issues.map(({ path, message }) =>
    STORE_WORDS.noDesign(`${path.map(String).join('.')} ${message}`),
  );
}

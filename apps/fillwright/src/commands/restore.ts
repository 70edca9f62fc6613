import { COMMAND_LINE, storeSentence, STORE_WORDS, USAGE } from '@fillwright/words/en';
import { readArguments } from '../arguments.ts';
import { auditText } from '../audit-text.ts';
import { refuse } from '../refuse.ts';
import type { Streams } from '../streams.ts';
import type { Audit } from '../usecases/audit-store.ts';
import { checkBackup } from '../usecases/check-backup.ts';
import { StoreError } from '../usecases/open-documents.ts';
import { restoreDocuments } from '../usecases/restore-documents.ts';
import { withStore } from '../with-store.ts';

/**
 * `fillwright restore [--check] <file>`: verifies a backup, and puts it into an empty store unless it is only checked.
 *
 * @param args - the file and flags
 * @param streams - where to write
 * @returns exit code: 0, 1 when the backup is not in order, 2 for wrong input, 3 for trouble of store or file
 */
export async function run(args: readonly string[], streams: Streams): Promise<number> {
  const { words, switches, problems } = readArguments(args, { check: 'switch' });
  if (switches.has('help')) {
    streams.out(USAGE.restore);
    return 0;
  }
  const [file, ...others] = words;
  const wrong = [...problems, ...others.map((word) => COMMAND_LINE.wordNotTaken(word))];
  if (file === undefined) wrong.push(COMMAND_LINE.backupMissing);
  if (file === undefined || wrong.length > 0) return refuse(streams, ...wrong);
  const checked = await check(file, streams);
  if (typeof checked === 'number') return checked;
  if (switches.has('check')) {
    streams.out(STORE_WORDS.backupSound(checked, file));
    return 0;
  }
  return withStore(streams, true, async (store) => {
    const audit = await restoreDocuments(store, file);
    if (audit.verdict !== 'pass') return unsound(audit, file, streams);
    streams.out(STORE_WORDS.restored(audit, store.place));
    return 0;
  });
}

/** Before any store is opened, and so before one is made. */
async function check(file: string, streams: Streams): Promise<Audit | number> {
  try {
    const audit = await checkBackup(file);
    return audit.verdict === 'pass' ? audit : unsound(audit, file, streams);
  } catch (error) {
    if (!(error instanceof StoreError)) throw error;
    streams.problem(storeSentence(error.code, error.facts));
    return 3;
  }
}

function unsound(audit: Audit, file: string, streams: Streams): number {
  streams.problem(auditText(audit, STORE_WORDS.backupUnsound(file)));
  return 1;
}

import { COMMAND_LINE, STORE_WORDS, USAGE } from '@fillwright/words/en';
import { readArguments } from '../arguments.ts';
import { auditText } from '../audit-text.ts';
import { refuse } from '../refuse.ts';
import type { Streams } from '../streams.ts';
import { backUp } from '../usecases/back-up.ts';
import { withStore } from '../with-store.ts';

/**
 * `fillwright backup <file>`: writes everything that is kept into one file and verifies that file.
 *
 * @param args - the file and flags
 * @param streams - where to write
 * @returns exit code: 0, 1 when what was written is not in order, 2 for wrong input, 3 for trouble of store or file
 */
export async function run(args: readonly string[], streams: Streams): Promise<number> {
  const { words, switches, problems } = readArguments(args, {});
  if (switches.has('help')) {
    streams.out(USAGE.backup);
    return 0;
  }
  const [file, ...others] = words;
  const wrong = [...problems, ...others.map((word) => COMMAND_LINE.wordNotTaken(word))];
  if (file === undefined) wrong.push(COMMAND_LINE.backupMissing);
  if (file === undefined || wrong.length > 0) return refuse(streams, ...wrong);
  return withStore(streams, false, async (store) => {
    const audit = await backUp(store, file, new Date().toISOString());
    if (audit.verdict === 'pass') streams.out(STORE_WORDS.backedUp(audit, file));
    else streams.problem(auditText(audit, STORE_WORDS.backedUpUnsound(file)));
    return audit.verdict === 'pass' ? 0 : 1;
  });
}

import { COMMAND_LINE, STORE_WORDS, USAGE } from '@fillwright/words/en';
import { readArguments } from '../arguments.ts';
import { auditText } from '../audit-text.ts';
import { refuse } from '../refuse.ts';
import type { Streams } from '../streams.ts';
import { auditStore } from '../usecases/audit-store.ts';
import { withStore } from '../with-store.ts';

/**
 * `fillwright audit verify`: verifies every version that is kept.
 *
 * @param args - `verify` and flags
 * @param streams - where to write
 * @returns exit code: 0, 1 when something was found or it cannot be told, 2 for wrong input, 3 for trouble of the store
 */
export async function run(args: readonly string[], streams: Streams): Promise<number> {
  const { words, switches, problems } = readArguments(args, { json: 'switch' });
  if (switches.has('help')) {
    streams.out(USAGE.audit);
    return 0;
  }
  const [verb, ...others] = words;
  const wrong = [...problems, ...others.map((word) => COMMAND_LINE.wordNotTaken(word))];
  if (verb !== 'verify') wrong.push(COMMAND_LINE.auditWhat);
  if (wrong.length > 0) return refuse(streams, ...wrong);
  return withStore(streams, false, async (store) => {
    const audit = await auditStore(store);
    const isPass = audit.verdict === 'pass';
    if (switches.has('json')) streams.out(JSON.stringify(audit, null, 2));
    else if (isPass) streams.out(STORE_WORDS.audited(audit));
    else streams.out(auditText(audit, audit.verdict === 'fail' ? STORE_WORDS.auditFailed : STORE_WORDS.cannotTell));
    return isPass ? 0 : 1;
  });
}

import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { createInterface } from 'node:readline';
import {
  anyBackupHeadingSchema,
  BACKUP_FORM,
  backupEndSchema,
  backupHeadSchema,
  backupHeadingSchema,
  backupVersionSchema,
} from './backup-form.ts';
import { chainCheck, type ChainCheck } from './chain-check.ts';
import type { StoredVersion } from './chain.ts';
import type { Audit, Finding } from './finding.ts';
import { StoreError } from './store-error.ts';

/**
 * Reads a backup from its first to its last line and verifies every hash, the order, the heads, and that it is whole.
 *
 * @param file - the backup
 * @param show - called with each version, before the verdict is known
 * @returns what was found, and the verdict
 * @throws StoreError "backup-unreadable" when it is not there or no backup of this form
 */
export async function readBackup(
  file: string,
  show: (stored: StoredVersion) => Promise<void> = async () => Promise.resolve(),
): Promise<Audit> {
  const reading: Reading = { check: chainCheck([]), hash: createHash('sha256'), heads: 0, lines: 0, findings: [] };
  try {
    const lines = createInterface({ input: createReadStream(file, 'utf8'), crlfDelay: Infinity });
    for await (const line of lines) {
      const stored = readLine(reading, line, file);
      if (stored) await show(stored);
    }
  } catch (error) {
    const code = error instanceof Error && 'syscall' in error ? String((error as NodeJS.ErrnoException).code) : '';
    throw code === '' ? error : new StoreError('backup-unreadable', { file, why: code });
  }
  if (reading.lines === 0) throw new StoreError('backup-unreadable', { file, why: 'it is empty' });
  return verdictOf(reading);
}

interface Reading {
  readonly check: ChainCheck;
  readonly hash: ReturnType<typeof createHash>;
  readonly findings: Finding[];
  heads: number;
  lines: number;
  end?: { readonly versions: number; readonly heads: number; readonly isSame: boolean };
}

function readLine(reading: Reading, line: string, file: string): StoredVersion | undefined {
  const content = jsonOf(line);
  const isFirst = reading.lines++ === 0;
  if (isFirst) {
    if (!backupHeadingSchema.safeParse(content).success)
      throw new StoreError('backup-unreadable', {
        file,
        why: isNewer(content)
          ? 'a newer Fillwright wrote it: install that one'
          : `its first line is not that of form ${BACKUP_FORM.form}`,
      });
  } else if (reading.end) reading.end = { ...reading.end, isSame: false };
  else {
    const end = backupEndSchema.safeParse(content);
    if (end.success) {
      const { versions, heads, sha256 } = end.data.end;
      reading.end = { versions, heads, isSame: reading.hash.copy().digest('hex') === sha256 };
      return undefined;
    }
  }
  reading.hash.update(`${line}\n`);
  return isFirst ? undefined : entryOf(reading, content);
}

function isNewer(heading: unknown): boolean {
  const parsed = anyBackupHeadingSchema.safeParse(heading);
  return parsed.success && parsed.data.form > BACKUP_FORM.form;
}

function entryOf(reading: Reading, content: unknown): StoredVersion | undefined {
  const version = backupVersionSchema.safeParse(content);
  if (version.success) {
    reading.check.version(version.data);
    return version.data;
  }
  const head = backupHeadSchema.safeParse(content);
  if (head.success) {
    reading.heads++;
    reading.check.head(head.data.head);
  } else reading.findings.push({ code: 'line-garbled', facts: { line: reading.lines } });
  return undefined;
}

function verdictOf({ check, heads, end, findings }: Reading): Audit {
  const { findings: ofChains, versionCount, chainCount } = check.result();
  const isWhole = end?.versions === versionCount && end.heads === heads;
  const all: Finding[] = [...findings, ...ofChains];
  if (end === undefined) all.push({ code: 'cut-short', facts: {} });
  else if (!end.isSame || !isWhole) all.push({ code: 'whole-differs', facts: {} });
  if (all.length > 0) return { verdict: 'fail', versionCount, chainCount, findings: all };
  if (versionCount > 0) return { verdict: 'pass', versionCount, chainCount, findings: [] };
  return { verdict: 'cannot-tell', versionCount, chainCount, findings: [{ code: 'no-versions', facts: {} }] };
}

function jsonOf(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}

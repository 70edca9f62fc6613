import { versionSchema } from '@fillwright/contract/documents';
import type { StoredVersion } from './chain.ts';
import type { Finding } from './finding.ts';
import type { HeadNote } from './heads-log.ts';
import { versionHash } from './version-hash.ts';

/** Versions are shown to it in the order of site, kind, id, version; then the heads. */
export interface ChainCheck {
  readonly version: (stored: StoredVersion) => void;
  /** `head`: the newest version by another note. */
  readonly head: (head: HeadNote) => void;
  /** Ends the check; every chain must have had its head. */
  readonly result: () => {
    readonly findings: readonly Finding[];
    readonly versionCount: number;
    readonly chainCount: number;
  };
}

const schema = versionSchema.loose();

/**
 * Recomputes every hash, the order, the link of each version to the one before, and compares with what was noted elsewhere.
 *
 * @param notes - the list of heads: which hash each version had when it was kept
 * @returns the check, to be fed
 */
export function chainCheck(notes: readonly HeadNote[]): ChainCheck {
  const findings: Finding[] = [];
  const noted = firstNotes(notes);
  const versionOfHash = new Map(notes.map((note) => [`${documentOf(note)} ${note.sha256}`, note.version]));
  const lasts = new Map<string, StoredVersion>();
  const headed = new Set<string>();
  let versionCount = 0;
  const found = (of: Pick<HeadNote, 'site' | 'kind' | 'id'>, code: Finding['code'], facts: Finding['facts']): void => {
    findings.push({ code, document: documentOf(of), facts });
  };
  const expected = (stored: StoredVersion, before: StoredVersion | undefined): void => {
    const next = (before?.version ?? 0) + 1;
    if (stored.version > next) found(stored, 'missing', { from: next, to: stored.version - 1 });
    else if (stored.previous !== (before?.sha256 ?? null)) found(stored, 'link-broken', { version: stored.version });
  };
  const unchanged = (stored: StoredVersion): void => {
    const { version, sha256 } = stored;
    const note = noted.get(keyOf(stored));
    noted.delete(keyOf(stored));
    const was = versionOfHash.get(`${documentOf(stored)} ${sha256}`);
    if (was !== undefined && was !== version) found(stored, 'exchanged', { version, was });
    else if (versionHash(stored) !== sha256) found(stored, 'changed', { version });
    else if (note !== undefined && note.sha256 !== sha256) found(stored, 'list-differs', { version });
  };
  return {
    version: (stored) => {
      versionCount++;
      const { version } = stored;
      const parsed = schema.safeParse(stored);
      if (!parsed.success) found(stored, 'unreadable', { version, why: parsed.error.issues[0]?.message ?? '' });
      const document = documentOf(stored);
      expected(stored, lasts.get(document));
      unchanged(stored);
      lasts.set(document, stored);
    },
    head: (head) => {
      const document = documentOf(head);
      const last = lasts.get(document);
      const version = last?.version ?? 0;
      headed.add(document);
      if (head.version > version) found(head, 'missing', { from: version + 1, to: head.version });
      else if (head.version < version || head.sha256 !== last?.sha256) found(head, 'head-differs', { version });
    },
    result: () => {
      for (const [document, last] of lasts)
        if (!headed.has(document)) found(last, 'head-missing', { version: last.version });
      // What the list still names was removed; a range that is already told is not told again.
      for (const note of noted.values())
        if (!findings.some((finding) => tellsMissing(finding, note)))
          found(note, 'missing', { from: note.version, to: note.version });
      return { findings, versionCount, chainCount: lasts.size };
    },
  };
}

/**
 * What was noted first counts: whoever changed a version in the database could have it sent once more, and so noted as
 * it stands now.
 */
function firstNotes(notes: readonly HeadNote[]): Map<string, HeadNote> {
  return new Map(notes.toReversed().map((note) => [keyOf(note), note]));
}

function tellsMissing({ code, document, facts: { from, to } }: Finding, note: HeadNote): boolean {
  const isHere = code === 'missing' && document === documentOf(note);
  return isHere && Number(from) <= note.version && note.version <= Number(to);
}

function documentOf({ site, kind, id }: Pick<HeadNote, 'site' | 'kind' | 'id'>): string {
  return `${site}/${kind}/${id}`;
}

function keyOf(of: Omit<HeadNote, 'sha256'>): string {
  return `${documentOf(of)} ${of.version}`;
}

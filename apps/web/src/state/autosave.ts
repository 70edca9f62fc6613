import type { DocumentKind, DocumentVersion, NewVersion } from '@fillwright/contract/documents';
import { saveVersion, ServerProblem } from './documents-client.ts';
import { personName } from './person.ts';

const IDLE_ms = 1000;
const RETRY_ms = 3000;

/** What a document's keeper tells the workbench. */
export type KeeperNews =
  | { readonly kind: 'pending' | 'saving' | 'offline'; readonly version: number }
  | { readonly kind: 'kept'; readonly version: number; readonly text: string }
  | { readonly kind: 'conflict'; readonly current: DocumentVersion; readonly yours: string };

/** Keeps one document on the server: drafts after a second of rest, saved versions on request. */
export interface Keeper {
  /** The text changed; a draft follows after a second of rest. */
  readonly touch: (text: string) => void;
  /** Sends at once; `saved` may carry a reason. */
  readonly send: (
    status: NewVersion['status'],
    reason?: string,
  ) => Promise<'kept' | 'offline' | 'conflict' | 'reason-needed' | 'refused'>;
  /** After a conflict or an opening: the version that the next one is based on. */
  readonly baseOn: (version: number) => void;
  readonly version: () => number;
  readonly stop: () => void;
}

/**
 * A keeper of one document.
 *
 * @param document - kind, id, newest version known (0: none yet) and its text
 * @param tell - gets the news
 * @returns the keeper
 */
export function keeperOf(
  document: { readonly kind: DocumentKind; readonly id: string; readonly version: number; readonly text: string },
  tell: (news: KeeperNews) => void,
): Keeper {
  let { version, text } = document;
  let kept = version === 0 ? undefined : text;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let lane: Promise<unknown> = Promise.resolve();
  const later = (delay_ms: number): void => {
    clearTimeout(timer);
    timer = setTimeout(() => void send('draft'), delay_ms);
  };
  const sendNow: Keeper['send'] = async (status, reason) => {
    if (status === 'draft' && text === kept) return 'kept';
    const sent = text;
    tell({ kind: 'saving', version });
    try {
      const body = {
        basedOn: version,
        status,
        text: sent,
        by: personName(),
        ...(reason === undefined ? {} : { reason }),
      };
      const saved = await saveVersion(document, body);
      if (saved.kind === 'conflict') {
        tell({ kind: 'conflict', current: saved.current, yours: sent });
        return 'conflict';
      }
      version = saved.version.version;
      kept = sent;
      tell({ kind: 'kept', version, text: sent });
      if (text !== sent) later(IDLE_ms);
      return 'kept';
    } catch (error) {
      return afterProblem(error);
    }
  };
  const afterProblem = (error: unknown): 'offline' | 'reason-needed' | 'refused' => {
    const status = error instanceof ServerProblem ? error.status : 0;
    if (status === 422 || status === 400) {
      tell({ kind: 'pending', version });
      const type = error instanceof ServerProblem ? error.body['type'] : undefined;
      return typeof type === 'string' && type.endsWith('reason-needed') ? 'reason-needed' : 'refused';
    }
    tell({ kind: 'offline', version });
    later(RETRY_ms);
    return 'offline';
  };
  /** One at a time, in order. */
  const send: Keeper['send'] = (status, reason) => {
    clearTimeout(timer);
    const mine = lane.then(() => sendNow(status, reason));
    lane = mine.catch(() => undefined);
    return mine;
  };
  return {
    touch: (next) => {
      text = next;
      if (text === kept) return;
      tell({ kind: 'pending', version });
      later(IDLE_ms);
    },
    send,
    baseOn: (next) => {
      version = next;
      kept = undefined;
    },
    version: () => version,
    stop: () => {
      clearTimeout(timer);
    },
  };
}

import type { Store } from '../usecases/open-documents.ts';

/** What the server stands on; time, store and log come in from outside. */
export interface AppParts {
  readonly store: Store;
  readonly now: () => Date;
  readonly version: string;
  /** Names under which browsers reach it besides `localhost` and its addresses. */
  readonly names: readonly string[];
  /** Requests that one address may make to the interface in a minute. */
  readonly mostRequests_per_min: number;
  /** Folder of the built pages. */
  readonly webFolder: string;
  /** Takes one line for each request. */
  readonly onRequest?: (line: string) => void;
  /** Takes what nobody foresaw, with the id under which it was answered; the answer itself says nothing of it. */
  readonly onUnforeseen: (id: string, error: unknown) => void;
}

import type { Db } from './db.ts';
import type { HeadsLog } from './heads-log.ts';

/** An open store. */
export interface Store {
  readonly db: Db;
  /** Heads and counts, kept outside the database too. */
  readonly headsLog: HeadsLog;
  /** How a person knows it: the folder, or the database without its password. */
  readonly place: string;
  readonly close: () => Promise<void>;
}

/** One database, embedded or a server: plain SQL, kept to what PostgreSQL 15 has. */
export interface Db {
  /** Rows of one statement; `$1`, `$2`, ... stand for the parameters. */
  query: <Row>(text: string, parameters?: readonly unknown[]) => Promise<readonly Row[]>;
  /** Runs `work` in one transaction: all of it is kept, or nothing. Retried by the adapter on a serialization failure. */
  tx: <Result>(work: (db: Pick<Db, 'query'>) => Promise<Result>) => Promise<Result>;
  close: () => Promise<void>;
}

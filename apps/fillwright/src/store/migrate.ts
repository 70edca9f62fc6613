import type { Db } from './db.ts';
import type { Migration } from './migration.ts';
import { StoreError } from './store-error.ts';

/** Several programs may make the tables at the same moment; the later one meets one of these and looks again. */
const MADE_MEANWHILE = ['23505', '42710', '42P06', '42P07'];

export interface Migrating {
  readonly migrations: readonly Migration[];
  /** How a person knows the store. */
  readonly place: string;
  /** Where there are no tables: make them, or refuse. */
  readonly whenNone: 'make' | 'no-store' | 'garbled';
  /** Called before each step beyond the first that changes a store. */
  readonly backUp?: ((before: number) => Promise<void>) | undefined;
}

/**
 * Brings the tables of a store to the form this program knows. Row 0 of table `migration` is locked meanwhile, so that of
 * several programs one does the work.
 *
 * @param db - the database
 * @param options - the steps, and what to do before each
 * @throws StoreError "no-store", "foreign" or "newer"
 */
export async function migrate(db: Db, options: Migrating): Promise<void> {
  const { migrations, place, backUp } = options;
  await requireOurs(db, options);
  const latest = migrations.at(-1)?.number ?? 0;
  for (;;) {
    const reached = await formOf(db);
    if (reached > latest) throw new StoreError('newer', { place, found: reached, known: latest });
    if (reached === latest) return;
    if (reached > 0) await backUp?.(reached + 1);
    await db.tx(async (tx) => {
      await tx.query('insert into fillwright.migration (number, at) values (0, now()) on conflict do nothing');
      await tx.query('select 1 from fillwright.migration where number = 0 for update');
      if ((await formOf(tx)) !== reached) return;
      for (const { number, statements } of migrations.filter(({ number: each }) => each === reached + 1)) {
        for (const statement of statements) await tx.query(statement);
        await tx.query('insert into fillwright.migration (number, at) values ($1, now())', [number]);
      }
    });
  }
}

/** Makes the schema where there is none; never takes one that another program made. */
async function requireOurs(db: Db, { place, whenNone }: Migrating): Promise<void> {
  const rows = await db.query<{ name: string }>(
    `select table_name::text as name from information_schema.tables where table_schema = 'fillwright' order by 1`,
  );
  const tables = rows.map(({ name }) => name);
  if (tables.includes('migration')) return;
  if (tables.length > 0)
    throw new StoreError('foreign', { place, found: `a schema fillwright with ${tables.join(', ')}` });
  if (whenNone !== 'make') throw new StoreError(whenNone, { place, why: 'its tables are missing' });
  const statements = [
    'create schema if not exists fillwright',
    'create table if not exists fillwright.migration (number integer primary key, at timestamptz not null)',
  ];
  for (const statement of statements)
    await db.query(statement).catch((error: unknown) => {
      const code = error instanceof Error && 'code' in error ? String(error.code) : '';
      if (!MADE_MEANWHILE.includes(code)) throw error;
    });
}

async function formOf(db: Pick<Db, 'query'>): Promise<number> {
  const [row] = await db.query<{ number: number }>('select max(number)::int as number from fillwright.migration');
  return row?.number ?? 0;
}

import type { z } from 'zod';
import { StoreError } from './store-error.ts';

/**
 * A row as the schema wants it: what is read is checked as strictly as what is written.
 *
 * @param row - the row
 * @param schema - what it has to be
 * @param place - how a person knows the store
 * @returns the row
 * @throws StoreError "garbled" with the document and the field
 */
export function checkedRow<Schema extends z.ZodType>(row: unknown, schema: Schema, place: string): z.infer<Schema> {
  const parsed = schema.safeParse(row);
  if (parsed.success) return parsed.data;
  const { kind, id, version } = row as Readonly<Record<string, unknown>>;
  const [issue] = parsed.error.issues;
  const field = issue?.path.map(String).join('.') ?? '';
  throw new StoreError('garbled', {
    place,
    why: `${String(kind)} ${String(id)}, version ${String(version)}: ${field} ${issue?.message ?? ''}`,
  });
}

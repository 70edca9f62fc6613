import type { Migration } from './migration.ts';
import { documents } from './migrations/0001-documents.ts';

/** All steps in order: a new one is a file in `migrations/` and one line here. */
export const MIGRATIONS: readonly Migration[] = [documents];

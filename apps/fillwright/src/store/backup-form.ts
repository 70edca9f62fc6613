import { versionSchema } from '@fillwright/contract/documents';
import { z } from 'zod';

/** First line of a backup, with the time beside it. */
export const BACKUP_FORM = { fillwright: 'backup', form: 1 } as const;

const headSchema = z.strictObject({
  site: z.string(),
  kind: z.string(),
  id: z.string(),
  version: z.int().min(1),
  sha256: z.string().length(64),
});

/** The lines of a backup: heading, versions, heads, end. */
export const backupHeadingSchema = z.strictObject({
  fillwright: z.literal(BACKUP_FORM.fillwright),
  form: z.literal(BACKUP_FORM.form),
  at: z.iso.datetime(),
});
/** The first line of a backup of any form. */
export const anyBackupHeadingSchema = z.looseObject({ fillwright: z.literal(BACKUP_FORM.fillwright), form: z.int() });
export const backupVersionSchema = versionSchema.extend({ site: z.string().min(1) });
export const backupHeadSchema = z.strictObject({ head: headSchema });
export const backupEndSchema = z.strictObject({
  end: z.strictObject({ versions: z.int().min(0), heads: z.int().min(0), sha256: z.string().length(64) }),
});

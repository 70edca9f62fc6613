import { z } from 'zod';

/** Kinds of document by now. The text of a brief is the brief file itself; that of a design is JSON of `designChoiceSchema`. */
export const DOCUMENT_KINDS = ['brief', 'design'] as const;

/** Name of a document: lower case letters, digits and hyphens. */
export const documentIdSchema = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
  .max(80)
  .meta({ description: 'Lower case letters, digits and single hyphens, at most 80' });

export const documentKindSchema = z.literal([...DOCUMENT_KINDS]);

/** Longest text of one version. */
export const LONGEST_TEXT_bytes = 262_144;

const text = z.string().min(1).max(LONGEST_TEXT_bytes);
const person = z.string().trim().min(1).max(80).meta({ description: 'Name typed by the person, unsigned' });
const reason = z.string().trim().min(3).max(500);

/** One immutable version as it is stored. */
export const versionSchema = z.strictObject({
  kind: documentKindSchema,
  id: documentIdSchema,
  version: z.int().min(1),
  status: z.enum(['draft', 'saved']),
  text,
  sha256: z.string().length(64),
  previous: z.string().length(64).nullable(),
  by: person,
  at: z.iso.datetime(),
  reason: reason.nullable(),
});

/** A version without its text, for lists. */
export const versionHeadSchema = versionSchema.omit({ text: true });

/** What a person sends: the version it was based on (0: none yet), so that nobody overwrites a newer one unseen. */
export const newVersionSchema = z.strictObject({
  basedOn: z.int().min(0),
  status: z.enum(['draft', 'saved']),
  text,
  by: person,
  /** Asked when the newest saved version is superseded by a saved one. */
  reason: reason.optional(),
});

/** Which set-up a person stands on: lever positions on top of a brief. */
export const designChoiceSchema = z.strictObject({
  format: z.literal(1),
  /** Version of the brief it was made on. */
  briefVersion: z.int().min(1),
  size: z.string(),
  method: z.string(),
  parts: z.record(z.string(), z.string()),
  values: z.record(z.string(), z.number()),
  seed: z.int().min(0),
});

export type DocumentKind = (typeof DOCUMENT_KINDS)[number];
export type DocumentVersion = z.infer<typeof versionSchema>;
export type DocumentVersionHead = z.infer<typeof versionHeadSchema>;
export type NewVersion = z.infer<typeof newVersionSchema>;
export type DesignChoice = z.infer<typeof designChoiceSchema>;

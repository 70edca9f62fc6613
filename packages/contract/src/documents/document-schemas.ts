import { z } from 'zod';
import { choiceSchema, formatSchema, numberSchema, strictMapping } from '#written';
import { noteSchema } from './note-schema.ts';

/**
 * Kinds of document by now. The text of a brief, a filler or a shell is the file itself; that of a design is JSON of
 * `designChoiceSchema`, that of weights JSON of `weightsSheetSchema`.
 */
export const DOCUMENT_KINDS = ['brief', 'design', 'filler', 'shell', 'weights'] as const;

/** Kinds of file that a brief can name. */
export const NAMED_KINDS = ['filler', 'shell'] as const;

const ID = 'lower case letters, digits and single hyphens, at most 80';

/** Name of a document. */
export const documentIdSchema = z
  .string({ error: ID })
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, { error: ID })
  .max(80, { error: ID })
  .meta({ description: `Name of a document: ${ID}` });

export const documentKindSchema = choiceSchema(DOCUMENT_KINDS, 'kind of document');

/** A number of characters, without unit. */
type Characters = number;

/** Longest text of one version. */
export const LONGEST_TEXT: Characters = 262_144;

const TEXT = `a text of 1 to ${LONGEST_TEXT} characters`;
const text = z
  .string({ error: TEXT })
  .min(1, { error: TEXT })
  .max(LONGEST_TEXT, { error: TEXT })
  // A store of text keeps neither the character 0 nor half of a pair.
  .regex(/^[^\0\p{Cs}]*$/u, { error: 'whole characters of Unicode other than the character 0' })
  .meta({ description: 'the document itself, exactly as the person has it' });
const person = noteSchema({ what: 'name typed by the person, unsigned', minLength: 1, maxLength: 80 });
const reason = noteSchema({ what: 'why a saved version is superseded', minLength: 3, maxLength: 500 });
const status = choiceSchema(['draft', 'saved'], 'draft while it is written, saved when the person says so');
const count = (what: string, min: number): z.ZodNumber => numberSchema({ unit: '1', min, what }, 'whole');

const versionFields = z.strictObject({
  kind: documentKindSchema,
  id: documentIdSchema,
  version: count('its number, from 1', 1),
  status,
  text,
  sha256: z.string().length(64),
  previous: z.string().length(64).nullable(),
  by: person,
  at: z.iso.datetime(),
  reason: reason.nullable(),
});

/** One immutable version as it is stored. */
export const versionSchema = versionFields.meta({ id: 'Version' });

/** A version without its text, for lists. */
export const versionHeadSchema = versionFields.omit({ text: true }).meta({ id: 'VersionHead' });

/** What a person sends: the version it was based on (0: none yet), so that nobody overwrites a newer one unseen. */
export const newVersionSchema = strictMapping(
  {
    basedOn: count('version it was based on, 0 for none yet', 0),
    status,
    text,
    by: person,
    /** Asked when the newest saved version is superseded by a saved one. */
    reason: reason.optional(),
  },
  'a new version',
).meta({ id: 'NewVersion' });

/** A filler or shell file that a brief names, as it was when a set-up was computed from it. */
const restedOnSchema = strictMapping(
  {
    file: noteSchema({ what: 'path as the brief names it', minLength: 1, maxLength: 500 }),
    kind: choiceSchema(NAMED_KINDS, 'kind of file'),
    id: documentIdSchema,
    version: count(
      'version that was read; left out: the example of that name that comes with the program',
      1,
    ).optional(),
  },
  'a file that a set-up was computed from',
);

/** Which set-up a person stands on: lever positions on top of a brief. */
export const designChoiceSchema = strictMapping(
  {
    format: formatSchema,
    briefVersion: count('version of the brief it was made on', 1),
    /** Left out in designs that were kept before it was asked, and where the brief names no file. */
    files: z.array(restedOnSchema, { error: 'a list of files' }).max(30, { error: 'at most 30 files' }).optional(),
    size: z.string({ error: 'a size in quotation marks' }),
    method: z.string({ error: 'the name of a dosing method' }),
    parts: z.record(z.string(), z.string({ error: 'the number of a part' })),
    values: z.record(z.string(), z.number({ error: 'a number' })),
    seed: count('shifts the draws behind the intervals', 0),
  },
  'which set-up a person stands on',
);

export type DocumentKind = (typeof DOCUMENT_KINDS)[number];
export type NamedKind = (typeof NAMED_KINDS)[number];
export type DocumentVersion = z.infer<typeof versionSchema>;
export type DocumentVersionHead = z.infer<typeof versionHeadSchema>;
export type NewVersion = z.infer<typeof newVersionSchema>;
export type DesignChoice = z.infer<typeof designChoiceSchema>;

import { z } from 'zod';
import { versionSchema } from '#documents';

/** Every problem the server answers with, by its code: its HTTP status. `docs/problems.md` says what they mean. */
export const PROBLEM_STATUS = {
  'invalid-input': 400,
  'unreadable-request': 400,
  'foreign-origin': 403,
  'unknown-address': 404,
  'unknown-document': 404,
  'unknown-example': 404,
  'newer-version': 409,
  'body-too-large': 413,
  'media-type': 415,
  'foreign-host': 421,
  'not-in-order': 422,
  'reason-missing': 422,
  'too-many-requests': 429,
  'internal-error': 500,
  'app-not-built': 503,
  'store-trouble': 503,
} as const;

export type ProblemCode = keyof typeof PROBLEM_STATUS;

const httpStatus = z.int().min(400).max(599);

/**
 * A problem document (RFC 9457, "Problem Details for HTTP APIs", 2023): `type`, `title`, `status`, `detail`, `instance`
 * are its members, the others our extensions.
 */
export const problemSchema = z
  .strictObject({
    type: z.string().regex(/^\/problems\/[a-z-]+$/),
    title: z.string().min(1),
    status: httpStatus,
    detail: z.string().min(1).exactOptional(),
    /** Of an internal error: the id under which it stands in the log of the server. */
    instance: z.string().exactOptional(),
    /** What is wrong with the input: where (a JSON pointer, RFC 6901, as the fragment of a URI) and what. */
    errors: z.array(z.strictObject({ pointer: z.string().startsWith('#'), detail: z.string().min(1) })).exactOptional(),
    /** Of `newer-version`: the newest version kept, and the text that was sent. */
    current: versionSchema.exactOptional(),
    yours: z.string().exactOptional(),
  })
  .meta({ id: 'Problem' });

export type Problem = z.infer<typeof problemSchema>;

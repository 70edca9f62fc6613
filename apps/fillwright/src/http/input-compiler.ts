import { faultsOfIssues } from '@fillwright/contract/faults';
import { faultSentence } from '@fillwright/words/en';
import type { FastifySchemaCompiler } from 'fastify';
import type { z } from 'zod';
import { ProblemError } from './problem-error.ts';

/**
 * Makes the check of a body, of parameters or of a query: everything that is wrong is said at once, each with its field.
 *
 * @param route - the schema
 * @returns the check
 */
export const inputCompiler: FastifySchemaCompiler<z.ZodType> =
  ({ schema }) =>
  (value: unknown) => {
    const parsed = schema.safeParse(value);
    if (parsed.success) return { value: parsed.data };
    const errors = faultsOfIssues(parsed.error.issues, { value }).map((fault) => ({
      pointer: pointerTo(fault.field),
      detail: faultSentence({ ...fault, field: fault.field === '' ? 'The body' : fault.field }),
    }));
    return { error: new ProblemError('invalid-input', { errors }) };
  };

/** Fields are paths joined by points, and no key of ours holds a point. */
function pointerTo(field: string): string {
  if (field === '') return '#';
  const keys = field.split('.').map((key) => key.replaceAll('~', '~0').replaceAll('/', '~1'));
  return `#/${keys.map(encodeURIComponent).join('/')}`;
}

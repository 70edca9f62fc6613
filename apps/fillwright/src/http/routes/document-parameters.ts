import { documentIdSchema, documentKindSchema } from '@fillwright/contract/documents';
import { z } from 'zod';

const NUMBER = 'a whole number from 1';

export const kindParameters = z.strictObject({ kind: documentKindSchema });
export const documentParameters = z.strictObject({ kind: documentKindSchema, id: documentIdSchema });
/** A number in an address is text: an empty one is no 0. */
export const versionParameters = documentParameters.extend({
  version: z
    .string()
    .regex(/^[1-9]\d{0,8}$/, { error: NUMBER })
    .meta({ description: `number of the version: ${NUMBER}` })
    .transform(Number),
});

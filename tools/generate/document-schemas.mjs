/** JSON Schemas of the files that people write and of what the program prints, for editors and machines. */
import { documentSchemas as schemas } from '@fillwright/contract/schemas';

/** @returns {Record<string, string>} text by file name under docs/schemas */
export function documentSchemas() {
  return Object.fromEntries(
    Object.entries(schemas()).map(([name, schema]) => [name, `${JSON.stringify(schema, null, 2)}\n`]),
  );
}

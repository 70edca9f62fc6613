import type { Design } from '@fillwright/engine/design';
import { designSchema } from './design-schema.ts';

/**
 * A design as it may be sent: every number is finite and every field known.
 *
 * @param design - result of the search
 * @returns the same data
 * @throws ZodError when a number is not finite or a field is not in the schema: a fault of ours, never of the input
 */
export function checkedDesign(design: Design): unknown {
  return designSchema.parse(design);
}

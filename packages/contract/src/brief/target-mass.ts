import { targetFill } from '@fillwright/engine/brief';
import { DomainError } from '@fillwright/engine/catalogue';
import { valueAt } from '#written';
import { targetSchema } from './target-schema.ts';

/**
 * Target mass of the part of a brief whose other values may be wrong.
 *
 * @param raw - a brief of any form
 * @returns mass, mg, or undefined where the target cannot be computed
 */
export function targetMass_mg(raw: unknown): number | undefined {
  const target = targetSchema.safeParse(valueAt(raw, ['parts', 0, 'target']));
  if (!target.success) return undefined;
  try {
    return targetFill(target.data).fill_mg;
  } catch (error) {
    if (error instanceof DomainError) return undefined;
    throw error;
  }
}

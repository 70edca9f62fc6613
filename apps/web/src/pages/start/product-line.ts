import { targetSchema } from '@fillwright/contract/brief';
import { yamlText, type ValuePath } from '@fillwright/contract/files';
import { targetFill } from '@fillwright/engine/brief';
import { DomainError } from '@fillwright/engine/catalogue';
import { valueIn } from '../../briefs/index.ts';

/** What the start page says of a product; what its text does not say is left out. */
export interface ProductLine {
  readonly name?: string;
  readonly fill_mg?: number;
  readonly part?: string;
  readonly sizes: readonly string[];
}

/**
 * The first words of the sentence that a product is, from the text of its brief, in order or not.
 *
 * @param text - YAML
 * @returns name, fill, part and sizes as far as they can be read
 */
export function productLine(text: string): ProductLine {
  const { value } = yamlText(text);
  const at = (path: ValuePath): unknown => valueIn(value, path);
  const [name, part, fill_mg] = [at(['product', 'name']), at(['parts', 0, 'name']), fillOf(at(['parts', 0, 'target']))];
  const shells = at(['shells']);
  const sizes = Array.isArray(shells) ? shells.map((shell: unknown) => valueIn(shell, ['size'])) : [];
  return {
    ...(typeof name === 'string' ? { name } : {}),
    ...(fill_mg === undefined ? {} : { fill_mg }),
    ...(typeof part === 'string' ? { part } : {}),
    sizes: sizes.filter((size) => typeof size === 'string'),
  };
}

function fillOf(raw: unknown): number | undefined {
  const target = targetSchema.safeParse(raw);
  if (!target.success) return undefined;
  try {
    return targetFill(target.data).fill_mg;
  } catch (error) {
    if (error instanceof DomainError) return undefined;
    throw error;
  }
}

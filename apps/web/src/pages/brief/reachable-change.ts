import type { ValuePath } from '@fillwright/contract/files';

/**
 * A change that the text can take: where something else than a mapping or a list stands on the way (`compression: guess`,
 * or a key without a value), what is to stand there is put in its place.
 *
 * @param document - what stands in the text
 * @param path - where the value is to stand
 * @param value - the value; undefined removes
 * @returns path and value to set
 */
export function reachableChange(
  document: unknown,
  path: ValuePath,
  value: unknown,
): { readonly path: ValuePath; readonly value: unknown } {
  let at = document;
  for (const [depth, step] of path.entries()) {
    if (depth > 0 && at !== undefined && !isCollection(at)) {
      const put = value === undefined ? undefined : path.slice(depth).reduceRight<unknown>(wrapped, value);
      return { path: path.slice(0, depth), value: put };
    }
    at = isCollection(at) ? (at as Record<string | number, unknown>)[step] : undefined;
  }
  return { path, value };
}

function isCollection(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}

function wrapped(inner: unknown, step: string | number): unknown {
  return typeof step === 'number' ? [inner] : { [step]: inner };
}

import type { SwaggerTransformObject } from '@fastify/swagger';
import { jsonSchemaTransformObject } from 'fastify-type-provider-zod';

/** Every schema with a name comes twice, for what is sent and for what is answered: the one that nothing refers to is dropped. */
export const onlyUsedSchemas: SwaggerTransformObject = (document) => {
  const made = jsonSchemaTransformObject(document);
  const schemas = ('components' in made && made.components.schemas) || {};
  const isUsed = (name: string): boolean => JSON.stringify([made.paths, schemas]).includes(`/schemas/${name}"`);
  let unused: readonly string[];
  do {
    unused = Object.keys(schemas).filter((name) => !isUsed(name));
    for (const name of unused) Reflect.deleteProperty(schemas, name);
  } while (unused.length > 0);
  return made;
};

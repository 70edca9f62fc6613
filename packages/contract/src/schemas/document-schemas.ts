import { z } from 'zod';
import { briefSchema } from '#brief';
import { designSchema } from '#design';
import { fillerSchema } from '#filler';
import { shellSchema } from '#shell';

/**
 * JSON Schemas (draft 2020-12) of the files that people write, for editors. They describe what is written, not what the
 * engine gets.
 *
 * @returns schema by file name under `docs/schemas/`
 */
export function documentSchemas(): Readonly<Record<string, unknown>> {
  return {
    'brief.schema.json': titled(briefSchema, 'Fillwright brief (*.brief.yaml)'),
    'design.schema.json': titled(designSchema, 'Fillwright design (fillwright design --json)'),
    'filler.schema.json': titled(fillerSchema, 'Fillwright filler (*.filler.yaml)'),
    'shell.schema.json': titled(shellSchema, 'Fillwright shell (*.shell.yaml)'),
  };
}

function titled(schema: z.ZodType, title: string): unknown {
  const { $schema, ...rest } = z.toJSONSchema(schema, { io: 'input' });
  return { $schema, title, ...rest };
}

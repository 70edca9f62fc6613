import { REPEATABILITY } from '@fillwright/engine/quantity';
import { SHELL_SIZE_NAMES, type ShellRecord } from '@fillwright/engine/shells';
import { z } from 'zod';
import { choiceSchema, formatSchema, mappingSchema, textSchema } from '#written';
import { figureSchema } from './figure-schema.ts';

const lengthRepeatability = { abs: REPEATABILITY.length_mm };
/** A volume by water or by drawing, and a mass of one shell. @source common practice, no source */
const SHARE = { rel: REPEATABILITY.densityShare_frac };

const mass = (what: string): ReturnType<typeof figureSchema> =>
  figureSchema({ unit: 'mg', min: 10, max: 500, what, repeatability: SHARE });
const dimension = (
  what: string,
  range: { readonly min: number; readonly max: number },
): ReturnType<typeof figureSchema> => figureSchema({ unit: 'mm', ...range, what, repeatability: lengthRepeatability });
const LENGTH = { min: 3, max: 40 };
const DIAMETER = { min: 2, max: 15 };
const WALLS = { min: 0.05, max: 1 };

const written = mappingSchema(
  {
    format: formatSchema,
    size: z
      .union([choiceSchema(SHELL_SIZE_NAMES, 'size of the table'), textSchema('own name of a size')], {
        error: `a size in quotation marks: ${SHELL_SIZE_NAMES.join(', ')}`,
      })
      .meta({ description: "size in quotation marks, such as '0' or '00', or a name of your own" }),
    source: textSchema('where the figures come from: whose measurement, which lot, when'),
    bodyVolume_mm3: figureSchema({
      ...{ unit: 'mm3', min: 20, max: 3000, repeatability: SHARE },
      what: 'volume of the body, filled to the rim',
    }).exactOptional(),
    gelatinMass_mg: mass('mass of an empty shell of gelatin').exactOptional(),
    hpmcMass_mg: mass('mass of an empty shell of hypromellose').exactOptional(),
    bodyLength_mm: dimension('length of the body', LENGTH).exactOptional(),
    capLength_mm: dimension('length of the cap', LENGTH).exactOptional(),
    closedLength_mm: dimension('length of the locked shell, over both ends', LENGTH).exactOptional(),
    bodyOuterDiameter_mm: dimension('outer diameter of the body at its rim', DIAMETER).exactOptional(),
    capOuterDiameter_mm: dimension('outer diameter of the cap at its rim', DIAMETER).exactOptional(),
    bodyDoubleWall_mm: dimension('flattened wall of the body: twice the wall', WALLS).exactOptional(),
    capDoubleWall_mm: dimension('flattened wall of the cap: twice the wall', WALLS).exactOptional(),
  },
  'one size of shell as the site measured it; what is not known is left out',
);

/** A shell file as people write it; every figure of its output says where it comes from. */
export const shellSchema = written.transform(({ format, size, source, ...figures }): ShellRecord => ({
  size,
  ...Object.fromEntries(Object.entries(figures).map(([key, figure]) => [key, { source, ...figure }])),
})) satisfies z.ZodType<ShellRecord>;

import type { Filler } from '@fillwright/engine/fillers';
import type { MeasuredKind } from '@fillwright/engine/quantity';
import { SHELL_SIZE_NAMES } from '@fillwright/engine/shells';
import { z } from 'zod';
import {
  choiceOf,
  choiceSchema,
  dateSchema,
  flagSchema,
  formatSchema,
  listSchema,
  mappingSchema,
  numberSchema,
  quantityOrGuessSchema,
  rangeSchema,
  textSchema,
} from '#written';

const RATIO: MeasuredKind = 'ratio';
const count = (what: string, max: InUnitOfCount): z.ZodNumber =>
  numberSchema({ unit: '1', min: 1, max, what }, 'whole');
/** A count; it has no unit. */
type InUnitOfCount = number;

const scale = mappingSchema(
  {
    station: count('tamping station; 1 is the first that the disc meets', 20),
    zeroReading_division: numberSchema({
      ...{ unit: 'division', min: -10_000, max: 10_000 },
      what: 'reading at which the pin stands flush with the top of the disc of the zero check',
    }),
    deeperIs: z
      .literal([1, -1], { error: '1, -1' })
      .meta({ description: '1 when a larger reading is a deeper pin, else -1' }),
    pitch_mm_per_division: numberSchema({
      ...{ unit: 'mm/division', above: 0, max: 10 },
      what: 'travel of the pin per division',
    }),
    step_division: numberSchema({ unit: 'division', above: 0, max: 100, what: 'smallest step that can be set' }),
    backlash_division: numberSchema({ unit: 'division', min: 0, max: 100, what: 'play of the thread' }),
    zeroCheckedOn: dateSchema('date of the zero check').exactOptional(),
  },
  'scale of one station',
);

const stock = {
  number: textSchema('number engraved or tagged'),
  condition: choiceSchema(['new', 'good', 'worn', 'do-not-use'], 'condition'),
  mounted: z
    .literal(true, { error: 'true, or leave the key out' })
    .meta({ description: 'true for the part that is on the machine now; else left out' })
    .exactOptional(),
};
const bore = { unit: 'mm', min: 2, max: 15 };
const height = { unit: 'mm', min: 2, max: 60 };
const size = z
  .union([choiceSchema(SHELL_SIZE_NAMES, 'size of the table'), textSchema('own name of a size')], {
    error: `a size in quotation marks: ${SHELL_SIZE_NAMES.join(', ')}`,
  })
  .meta({ description: 'a size in quotation marks' });

const part = z.discriminatedUnion(
  'kind',
  [
    mappingSchema(
      {
        kind: choiceSchema(['disc'], 'kind of part'),
        ...stock,
        forSizes: listSchema(size, { minCount: 1, maxCount: 20, what: 'sizes of shells for which the disc is used' }),
        boreNominal_mm: numberSchema({ ...bore, what: 'bore diameter as ordered' }),
        boreMeasured_mm: numberSchema({ ...bore, what: 'bore diameter as measured' }).exactOptional(),
        heightNominal_mm: numberSchema({ ...height, what: 'height as ordered' }),
        heightMeasured_mm: numberSchema({ ...height, what: 'height as measured' }).exactOptional(),
      },
      'a measuring disc',
    ),
    mappingSchema(
      {
        kind: choiceSchema(['spring-set'], 'kind of part'),
        ...stock,
        name: textSchema('name that the shop uses'),
        preload_N: quantityOrGuessSchema({
          ...{ kind: RATIO, unit: 'N', min: 0, max: 3000 },
          what: 'force at which a pin starts to yield',
        }).exactOptional(),
        rate_N_per_mm: quantityOrGuessSchema({
          ...{ kind: RATIO, unit: 'N/mm', min: 0, max: 1000 },
          what: 'rate of the spring',
        }).exactOptional(),
      },
      'a set of springs, one behind every pin',
    ),
  ],
  { error: choiceOf('kind', 'disc, spring-set') },
);

/** A filler as people write it: the engine's filler, with the number of the form in front. */
export const fillerSchema = mappingSchema(
  {
    format: formatSchema,
    id: textSchema('short name of the filler, for records'),
    name: textSchema('name of the filler, for people'),
    carriers: mappingSchema(
      { carrierCount: count('carriers on the turret', 200), boreCount: count('bores in a carrier', 200) },
      'carriers of the shells',
    ),
    disc: mappingSchema(
      {
        groupCount: count('groups of bores in the disc', 50),
        columnCount: count('bores of a group', 200),
        boreOfColumn: listSchema(count('bore of the carrier, counted from 1', 200), {
          ...{ minCount: 1, maxCount: 200 },
          what: 'bore that each column feeds; left out: column j feeds bore j',
        }).exactOptional(),
        isRefilledAfterLastPin: flagSchema('whether powder lies between the last pin and the scraper'),
      },
      'how the bores of the measuring disc are laid out',
    ),
    pins: mappingSchema(
      {
        machineRange: rangeSchema('depths that the machine can set, mm below the top of the disc'),
        validatedRange: rangeSchema('depths validated for every product; the brief narrows them').exactOptional(),
        referredTo: choiceSchema(['base', 'disc-top'], 'what the depth is set against'),
        zeroDiscHeight_mm: numberSchema({
          ...height,
          what: 'measured height of the disc at the zero check; asked when referred to the base',
        }).exactOptional(),
        scales: listSchema(scale, { minCount: 1, maxCount: 20, what: 'scales, in the order of the stations' }),
      },
      'tamping pins',
    ),
    speed: mappingSchema(
      {
        slowest_strokes_per_min: numberSchema({ unit: 'strokes/min', above: 0, max: 1000, what: 'slowest speed' }),
        usual_strokes_per_min: numberSchema({ unit: 'strokes/min', above: 0, max: 1000, what: 'usual speed' }),
        fastest_strokes_per_min: numberSchema({ unit: 'strokes/min', above: 0, max: 1000, what: 'fastest speed' }),
      },
      'speeds',
    ),
    parts: listSchema(part, { minCount: 2, maxCount: 500, what: 'change parts in stock' }),
    source: textSchema('where the figures come from'),
  },
  'a filler with a measuring disc and spring plungers',
) satisfies z.ZodType<Filler>;

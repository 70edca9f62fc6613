import { allowedRange } from '@fillwright/engine/catalogue';
import { z } from 'zod';
import { dateSchema, numberSchema, strictMapping, textSchema, type NumberLimits } from '#written';

/** A figure as people write it, without its source where that is the source of the whole file. */
export interface FigureInFile {
  readonly value: InUnitOfKey;
  readonly plusMinus: InUnitOfKey;
  readonly source?: string;
}

/** A number in the unit of the key it stands under. */
type InUnitOfKey = number;

/** Half-width within which a figure is expected: so many standard deviations of the pieces. @source common practice, no source */
const HALF_WIDTH_IN_SDS = 3;

/**
 * Schema of a figure of a shell: a number (one measurement), `{value, plusMinus}` as a certificate states it, or
 * `{mean, sd, n}` of shells measured one by one.
 *
 * @param limits - meaning, unit, range, and the sd of one measurement: in the unit of the key, or as a share of the value
 * @returns the schema; half-widths are three standard deviations
 */
export function figureSchema(
  limits: NumberLimits & { readonly repeatability: { readonly abs?: number; readonly rel?: number } },
): z.ZodType<FigureInFile, FigureInFile | InUnitOfKey | { mean: number; sd: number; n: number }> {
  const { repeatability, ...range } = limits;
  const spread = { unit: range.unit, min: 0, max: range.max ?? 1e6 };
  const stated = strictMapping(
    {
      value: numberSchema({ ...range, what: `middle value of: ${range.what}` }),
      plusMinus: numberSchema({ ...spread, what: 'half-width within which it is expected' }),
      source: textSchema("where the figure comes from; left out: the file's source").exactOptional(),
    },
    'as a certificate or drawing states it',
  );
  const measured = strictMapping(
    {
      mean: numberSchema({ ...range, what: `mean of: ${range.what}` }),
      sd: numberSchema({ ...spread, what: 'standard deviation of the shells' }),
      n: numberSchema({ unit: '1', min: 1, max: 100_000, what: 'shells measured' }, 'whole'),
      method: textSchema('how it was measured').exactOptional(),
      date: dateSchema('when it was measured').exactOptional(),
    },
    'shells measured one by one',
  );
  const error = `a number, ${allowedRange(range)}, or {value, plusMinus}, or {mean, sd, n}`;
  return z
    .union([numberSchema(range), stated, measured], { error })
    .meta({ description: `${range.what} (${allowedRange(range)}), or {value, plusMinus}, or {mean, sd, n}` })
    .transform((written): FigureInFile => {
      if (typeof written === 'number') {
        const sd = (repeatability.abs ?? 0) + (repeatability.rel ?? 0) * written;
        return { value: written, plusMinus: HALF_WIDTH_IN_SDS * sd };
      }
      return 'value' in written ? written : { value: written.mean, plusMinus: HALF_WIDTH_IN_SDS * written.sd };
    });
}

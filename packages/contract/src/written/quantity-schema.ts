import { allowedRange } from '@fillwright/engine/catalogue';
import { singleMeasurement, type MeasuredKind, type Quantity } from '@fillwright/engine/quantity';
import { z } from 'zod';
import { dateSchema } from './date-schema.ts';
import type { NumberLimits } from './number-limits.ts';
import { numberSchema } from './number-schema.ts';
import { strictMapping } from './strict-mapping.ts';
import { textSchema } from './text-schema.ts';

/** A number with a spread: measured n times, or calibrated from weights. */
interface WrittenMeasured {
  mean: number;
  sd: number;
  n: number;
  method?: string;
  date?: string;
}
interface WrittenCalibrated {
  mean: number;
  sd: number;
  from: string;
}

/** A quantity as people write it: one measurement, or with its spread. */
export type WrittenQuantity = InUnitOfKey | WrittenMeasured | WrittenCalibrated;

/** A number in the unit of the key it stands under. */
type InUnitOfKey = number;

export interface QuantityLimits extends NumberLimits {
  /** Decides the sd of a number that is written without one. */
  readonly kind: MeasuredKind;
}

/**
 * Schema of a quantity that has to be given: a number (one measurement; its sd is the repeatability of its method),
 * `{mean, sd, n}` (measured) or `{mean, sd, from}` (calibrated).
 *
 * @param limits - meaning, unit, range and what kind of measurement it is
 * @returns the schema; its output is the engine's quantity
 */
export function quantitySchema(limits: QuantityLimits): z.ZodType<Quantity, WrittenQuantity> {
  return z
    .union(written(limits), { error: `${one(limits)}, or {mean, sd, n}` })
    .meta({ description: `${described(limits)}, or {mean, sd, n} of repeated measurements` })
    .transform((value) => quantityOf(value, limits.kind));
}

/**
 * Schema of a quantity for which the engine has a guess: as `quantitySchema`, or the word `guess`.
 *
 * @param limits - meaning, unit, range and what kind of measurement it is
 * @returns the schema; its output is undefined where the guess of the engine is wanted
 */
export function quantityOrGuessSchema(
  limits: QuantityLimits,
): z.ZodType<Quantity | undefined, WrittenQuantity | 'guess'> {
  return z
    .union([...written(limits), z.literal('guess')], { error: `${one(limits)}, or {mean, sd, n}, or guess` })
    .meta({
      description: `${described(limits)}, or {mean, sd, n} of repeated measurements, or guess (same as left out)`,
    })
    .transform((value) => (value === 'guess' ? undefined : quantityOf(value, limits.kind)));
}

function one(limits: NumberLimits): string {
  return `a number, ${allowedRange(limits)}`;
}

function described(limits: NumberLimits): string {
  return `${limits.what} (${allowedRange(limits)}); one number is one measurement`;
}

function written(
  limits: NumberLimits,
): [z.ZodNumber, z.ZodType<WrittenMeasured, WrittenMeasured>, z.ZodType<WrittenCalibrated, WrittenCalibrated>] {
  const { unit } = limits;
  const spread = {
    mean: numberSchema({ ...limits, what: `mean of ${limits.what}` }),
    sd: numberSchema({ unit, min: 0, max: limits.max ?? 1e6, what: 'standard deviation of the single values' }),
  };
  const measured = {
    ...spread,
    n: numberSchema({ unit: '1', min: 1, max: 100_000, what: 'how many values the mean is of' }, 'whole'),
    method: textSchema('how it was measured').exactOptional(),
    date: dateSchema('when it was measured').exactOptional(),
  };
  const calibrated = { ...spread, from: textSchema('weights of which trial or lots it was learned from') };
  return [
    numberSchema(limits),
    strictMapping(measured, 'measured'),
    strictMapping(calibrated, 'calibrated from weights'),
  ];
}

function quantityOf(value: WrittenQuantity, kind: MeasuredKind): Quantity {
  if (typeof value === 'number') return singleMeasurement({ value, kind });
  return 'from' in value ? { basis: 'calibrated', ...value } : { basis: 'measured', ...value };
}

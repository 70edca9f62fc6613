import { DomainError } from '#catalogue';
import type { Quantity } from './quantity.ts';

/**
 * How well the mean of a quantity is known, as one standard deviation in the unit of the quantity.
 *
 * @param quantity - measured: sd of single values and n >= 1; guess and calibrated: sd of the mean itself
 * @returns sd / sqrt(n) when measured, else sd
 * @throws DomainError "not-a-number" (sd negative or not finite, n below 1)
 * @source JCGM 100:2008 (GUM) 4.2.3, type A evaluation; guess: type B, 4.3 (from memory)
 * @validity repeats that are independent of each other
 * @example standardUncertainty({ basis: 'measured', mean: 0.5, sd: 0.02, n: 4 }) // 0.01
 */
export function standardUncertainty(quantity: Quantity): InUnitOfQuantity {
  const n = quantity.basis === 'measured' ? quantity.n : 1;
  if (!(quantity.sd >= 0 && Number.isFinite(quantity.sd) && n >= 1))
    throw new DomainError('not-a-number', { sd: quantity.sd, n });
  return quantity.sd / Math.sqrt(n);
}

/** A number in the unit of the quantity it was made from. */
type InUnitOfQuantity = number;

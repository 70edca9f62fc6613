type Dimension = 'mass' | 'length' | 'area' | 'volume' | 'time' | 'force' | 'pressure' | 'viscosity' | 'share';

/** Units that differ from each other by a power of ten: dimension and exponent. @source The International System of Units, 9th edition (2019), tables 7 and 8 (litre: exactly 1 dm3) */
const POWERS_OF_TEN: Readonly<Record<string, readonly [Dimension, number]>> = {
  ...{ ug: ['mass', -6], mg: ['mass', -3], g: ['mass', 0], kg: ['mass', 3] },
  ...{ um: ['length', -6], mm: ['length', -3], cm: ['length', -2], m: ['length', 0] },
  ...{ mm2: ['area', -6], cm2: ['area', -4], m2: ['area', 0] },
  ...{ mm3: ['volume', -9], uL: ['volume', -9], cm3: ['volume', -6], mL: ['volume', -6], L: ['volume', -3] },
  ...{ m3: ['volume', 0], us: ['time', -6], ms: ['time', -3], s: ['time', 0] },
  ...{ mN: ['force', -3], N: ['force', 0], kN: ['force', 3] },
  ...{ Pa: ['pressure', 0], hPa: ['pressure', 2], kPa: ['pressure', 3], MPa: ['pressure', 6] },
  ...{ mPas: ['viscosity', -3], Pas: ['viscosity', 0] },
  ...{ ppm: ['share', -6], pct: ['share', -2], frac: ['share', 0] },
};

/**
 * A value in another unit, where the factor is an exact power of ten; used to tell a person what to write.
 *
 * @param input - value, and the unit suffixes of two keys, such as `kg_per_m3` and `g_per_mL`
 * @returns the value in the unit `to`, correctly rounded; undefined when the units measure different things or the
 *   factor is no power of ten
 * @throws nothing
 * @source The International System of Units, 9th edition (2019)
 * @example convertedValue({ value: 500, from: 'kg_per_m3', to: 'g_per_mL' }) // 0.5
 */
export function convertedValue(input: {
  readonly value: InUnitOfFrom;
  readonly from: string;
  readonly to: string;
}): InUnitOfFrom | undefined {
  const from = factorsOf(input.from);
  const to = factorsOf(input.to);
  if (!from || !to || from.dimensions !== to.dimensions) return undefined;
  const exponent = from.exponent - to.exponent;
  // Multiplying and dividing by a whole power of ten rounds once; multiplying by 0.001 would round twice.
  return exponent >= 0 ? input.value * Number(`1e${exponent}`) : input.value / Number(`1e${-exponent}`);
}

/** A number in the unit that the text beside it names. */
type InUnitOfFrom = number;

function factorsOf(suffix: string): { readonly dimensions: string; readonly exponent: number } | undefined {
  const [top = '', ...below] = suffix.split(/_?per_/);
  const parts = [...(top === '' ? [] : [{ unit: top, sign: 1 }]), ...below.map((unit) => ({ unit, sign: -1 }))];
  const found = parts.map(({ unit, sign }) => ({ sign, known: POWERS_OF_TEN[unit] }));
  if (found.some(({ known }) => known === undefined)) return undefined;
  return {
    dimensions: found.map(({ sign, known }) => `${sign} ${known?.[0] ?? ''}`).join(', '),
    exponent: found.reduce((sum, { sign, known }) => sum + sign * (known?.[1] ?? 0), 0),
  };
}

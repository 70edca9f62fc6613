import type { NumberReference } from '../number-reference.ts';
import type { ChosenEquation } from './chosen-equation.ts';

/** A sum and its product differ by rounding only. */
const SAME = 1e-9;

/**
 * What a step of a pin does. Where nothing yields, the step fills a slice of the bore, and the drawing shows of what; where
 * a spring yields, only the two masses are known.
 *
 * @param reference - with the inputs of the station model
 * @param outputs - masses one step up and down at the means
 * @returns the equation with its values
 */
export function gainEquation(
  { inputs, station = 1 }: NumberReference,
  outputs: Readonly<Record<string, unknown>>,
): ChosenEquation {
  const given = (key: string): number => Number(inputs[key] ?? outputs[key]);
  const bore = given('boreDiameter_mm');
  const [feed, refill] = [given('feedDensity_g_per_mL'), given('refill_ratio')];
  const [step, steps] = [given('step_mm'), given('steps')];
  const [deeper, shallower] = [given('deeper_mg'), given('shallower_mg')];
  const area = (Math.PI / 4) * bore * bore;
  const slice = steps * refill * feed * area * step;
  const isSlice = Math.abs(deeper - shallower - slice) <= SAME * Math.abs(deeper);
  const depth = (inputs['depths_mm'] as readonly number[])[station - 1] ?? NaN;
  const median = 'g = \\operatorname{median}\\,g_i,\\quad g_0 = \\frac{W_2-W_1}{n}';
  const values = {
    ...{
      g: given('median_mg_per_step'),
      g_0: (deeper - shallower) / steps,
      W_2: deeper,
      W_1: shallower,
      n: steps,
      s: step,
    },
    ...{ f: refill, ρ_0: feed, A: area, [`p_${station}`]: depth },
  };
  if (!isSlice)
    return {
      latex: `${median},\\quad W_2 = W(p_{${station}}+s),\\quad W_1 = W(p_{${station}}-s)`,
      ...{ values, inDrawing: [{ base: 'p', sub: String(station), field: 'pin-depth', station }] },
    };
  return {
    latex: `${median},\\quad W_2 - W_1 = n\\,f\\,\\rho_0 A\\,s`,
    values,
    inDrawing: [
      { base: 'ρ', sub: '0', field: 'feed-density', station },
      { base: 'f', field: 'refill', station },
      { base: 'A', field: 'bore-area', station },
    ],
  };
}

import type { Letter, LetterPlace, NumberReference } from '../number-reference.ts';
import type { ChosenEquation } from './chosen-equation.ts';

/** What the station model was given and gave, read back from the reference and its outputs. */
interface DiscNumbers {
  readonly station: number;
  readonly feed: number;
  readonly area: number;
  readonly height: number;
  readonly refill: number;
  readonly captured: number;
  readonly set: number;
  readonly reached: number;
  readonly before: number;
  readonly after: number;
  readonly regime: string;
}

/**
 * The station model for one number of one station: the line that holds there, with its values.
 *
 * @param reference - the number
 * @param outputs - of its entry
 * @returns the equation; undefined for other entries
 */
export function discEquation(
  reference: NumberReference,
  outputs: Readonly<Record<string, unknown>>,
): ChosenEquation | undefined {
  const { entry, output, station } = reference;
  if (entry !== 'dosing.disc-stations' && entry !== 'dosing.disc-recurrence') return undefined;
  if (output === 'slugDensity_g_per_mL') return densityEquation(reference, outputs);
  if (station === undefined) return undefined;
  const numbers = discNumbers(reference, outputs, station);
  if (output === 'forces_N') return forceEquation(reference, outputs, numbers);
  return output === 'reached_mm' ? reachedEquation(reference, outputs, numbers) : massEquation(reference, numbers);
}

function discNumbers(
  { entry, inputs }: NumberReference,
  outputs: Readonly<Record<string, unknown>>,
  station: number,
): DiscNumbers {
  const isModel = entry === 'dosing.disc-stations';
  const [feed, bore, height] = [
    given(inputs, 'feedDensity_g_per_mL'),
    given(inputs, 'boreDiameter_mm'),
    given(inputs, 'discHeight_mm'),
  ];
  const area = (Math.PI / 4) * bore * bore;
  const set = given(inputs, 'depths_mm', station - 1);
  const masses = (at: number): number => given(outputs, 'masses_mg', isModel ? at - 1 : at);
  const regimes = outputs['regimes'] as readonly string[] | undefined;
  return {
    ...{ station, feed, area, height, set },
    refill: isModel ? given(inputs, 'refill_ratio') : given(inputs, 'refills_ratio', station - 1),
    captured: isModel && 'captured_mg' in inputs ? given(inputs, 'captured_mg') : 0,
    reached: isModel ? given(outputs, 'reached_mm', station - 1) : set,
    before: station === 1 ? feed * area * height : masses(station - 1),
    after: masses(station),
    regime: regimes?.[station - 1] ?? (set > 0 ? 'on-stop' : 'flush'),
  };
}

function given(values: Readonly<Record<string, unknown>>, key: string, item?: number): number {
  const value = item === undefined ? values[key] : (values[key] as readonly unknown[] | undefined)?.[item];
  return typeof value === 'number' ? value : NaN;
}

/** m_k = m_(k-1) + c_k + f rho0 A p_k on its stop, x_k on its spring; a flush pin adds nothing. */
function massEquation(reference: NumberReference, n: DiscNumbers): ChosenEquation {
  const { station: k, refill, feed, area, reached, before, after, regime } = n;
  const depth = regime === 'on-stop' ? 'p' : 'x';
  const isRefilled = reached > 0 && !isDryBehind(reference, k);
  const hasCaptured = n.captured > 0 && regime !== 'flush';
  const captured = after - before - (isRefilled ? refill * feed * area * reached : 0);
  const terms = [
    `m_{${k - 1}}`,
    ...(hasCaptured ? [`c_{${k}}`] : []),
    ...(isRefilled ? [`f\\,\\rho_0 A\\,${depth}_{${k}}`] : []),
  ];
  return {
    latex: `${k === 1 ? 'm_0 = \\rho_0 A H,\\quad ' : ''}m_{${k}} = ${terms.join(' + ')}`,
    values: {
      ...{ [`m_${k}`]: after, [`m_${k - 1}`]: before, [`c_${k}`]: captured, [`${depth}_${k}`]: reached },
      ...{ f: refill, ρ_0: feed, A: area, H: n.height },
    },
    inDrawing: [
      ...(k === 1 ? [...place('H', undefined, 'disc-height'), ...place('ρ', '0', 'feed-density')] : []),
      ...(isRefilled ? refillLetters(depth, k) : []),
      ...massLetter(k - 1),
      ...massLetter(k),
    ],
  };
}

/** No powder lies behind the last pin: nothing refills what it leaves. */
function isDryBehind({ inputs }: NumberReference, station: number): boolean {
  const isLast = station === (inputs['depths_mm'] as readonly number[]).length;
  return isLast && inputs['isRefilledAfterLastPin'] === false;
}

function refillLetters(depth: 'p' | 'x', k: number): readonly Letter[] {
  return [
    ...(k === 1 ? [] : place('ρ', '0', 'feed-density')),
    ...place('f', undefined, 'refill', k),
    ...place('A', undefined, 'bore-area', k),
    ...place(depth, String(k), depth === 'p' ? 'pin-depth' : 'reached-depth', k),
  ];
}

/** What is struck level before the first station has no station of its own. */
function massLetter(k: number): readonly Letter[] {
  return k === 0 ? place('m', '0', 'mass-before') : place('m', String(k), 'mass', k);
}

/** Force of a pin on its stop: Kawakita's law, solved for the pressure at the density that the stop leaves. */
function forceEquation(
  { inputs }: NumberReference,
  outputs: Readonly<Record<string, unknown>>,
  n: DiscNumbers,
): ChosenEquation {
  const { station: k, area, height, reached } = n;
  const initial = given(inputs, 'initialDensity_g_per_mL');
  const mass = n.before + n.captured;
  const density = mass / (area * (height - reached));
  return {
    latex: `\\rho = \\frac{m_{${k - 1}}${n.captured > 0 ? `+c_{${k}}` : ''}}{A\\,(H-p_{${k}})},\\quad C = 1-\\frac{\\rho_i}{\\rho},\\quad F_{${k}} = A\\,\\frac{C}{b\\,(a-C)}`,
    values: {
      ...{ ρ: density, A: area, H: height, [`p_${k}`]: reached, [`m_${k - 1}`]: n.before, [`c_${k}`]: n.captured },
      ...{ C: 1 - initial / density, ρ_i: initial, a: given(inputs, 'a_frac'), b: given(inputs, 'b_per_MPa') },
      [`F_${k}`]: given(outputs, 'forces_N', k - 1),
    },
    inDrawing: [
      ...place('A', undefined, 'bore-area', k),
      ...place('H', undefined, 'disc-height'),
      ...place('p', String(k), 'pin-depth', k),
      ...massLetter(k - 1),
      ...place('F', String(k), 'force', k),
    ],
  };
}

/** A pin on its spring stops where powder and spring push alike. */
function reachedEquation(
  { inputs }: NumberReference,
  outputs: Readonly<Record<string, unknown>>,
  n: DiscNumbers,
): ChosenEquation {
  const { station: k, set, reached, regime } = n;
  const values = {
    ...{ [`x_${k}`]: reached, [`p_${k}`]: set, F_0: given(inputs, 'preload_N'), k_s: given(inputs, 'rate_N_per_mm') },
    [`F_${k}`]: given(outputs, 'forces_N', k - 1),
  };
  const shown = [...place('x', String(k), 'reached-depth', k), ...place('p', String(k), 'pin-depth', k)];
  if (regime === 'on-stop') return { latex: `x_{${k}} = p_{${k}}`, values, inDrawing: shown };
  return {
    latex: `F_{${k}} = F_0 + k_s\\,(p_{${k}}-x_{${k}})`,
    ...{ values, inDrawing: [...shown, ...place('F', String(k), 'force', k)] },
  };
}

function densityEquation({ inputs }: NumberReference, outputs: Readonly<Record<string, unknown>>): ChosenEquation {
  const masses = outputs['masses_mg'] as readonly number[];
  const [bore, height] = [given(inputs, 'boreDiameter_mm'), given(inputs, 'discHeight_mm')];
  const area = (Math.PI / 4) * bore * bore;
  const last = masses.length;
  return {
    latex: `\\rho = \\frac{m_{${last}}}{A\\,H}`,
    values: { ρ: given(outputs, 'slugDensity_g_per_mL'), [`m_${last}`]: masses.at(-1) ?? NaN, A: area, H: height },
    inDrawing: [
      ...place('m', String(last), 'mass', last),
      ...place('A', undefined, 'bore-area', last),
      ...place('H', undefined, 'disc-height'),
    ],
  };
}

function place(base: string, sub: string | undefined, ...[field, station]: [LetterPlace, number?]): readonly Letter[] {
  return [{ base, ...(sub === undefined ? {} : { sub }), field, ...(station === undefined ? {} : { station }) }];
}

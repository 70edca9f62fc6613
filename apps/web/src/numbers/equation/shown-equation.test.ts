import { computeEntry } from '@fillwright/engine/catalogue';
import { findEntry } from '@fillwright/engine/register';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { mathOf } from '../latex/math-of.tsx';
import type { EquationLine } from '../latex/equation-lines.ts';
import type { NumberReference } from '../number-reference.ts';
import { shownEquation, type ShownEquation } from './shown-equation.ts';

function shown(reference: NumberReference): ShownEquation {
  const entry = findEntry(reference.entry);
  const computed = entry && computeEntry(entry, reference.inputs);
  if (!entry || !computed?.ok) throw new Error('cannot be computed');
  return shownEquation(reference, entry, computed.outputs);
}

function text(line: EquationLine | undefined): string {
  if (!line) return '';
  const side = (node: EquationLine['right']): string =>
    node ? renderToStaticMarkup(createElement('math', {}, mathOf(node))).replace(/<mspace[^>]*>|<[^>]*>/g, '') : '';
  return `${side(line.left)}${line.relation ?? ''}${side(line.right)}`;
}

const numbers = (reference: NumberReference): readonly string[] =>
  shown(reference).lines.map((line) => text(line.numbers));

const STATIONS = {
  entry: 'dosing.disc-stations',
  title: '',
  inputs: {
    ...{ feedDensity_g_per_mL: 0.54, boreDiameter_mm: 6.6, discHeight_mm: 15.5, depths_mm: [3.5, 2.2, 1.3, 0.8, 0] },
    ...{
      refill_ratio: 1,
      a_frac: 0.55,
      b_per_MPa: 1.6,
      initialDensity_g_per_mL: 0.54,
      preload_N: 50,
      rate_N_per_mm: 6,
    },
  },
};

// Numbers by hand with the design reference of the demo product (286, 351, 392 … mg; 33 N at the slug's mean density);
// 6.6 mm bore: 34.212 mm2.
describe('shownEquation', () => {
  test('golden: mass after station 2 of the demo product', () => {
    expect(numbers({ ...STATIONS, output: 'masses_mg', item: 1, station: 2 })).toEqual(['391.7=351+1×0.54×34.21×2.2']);
  });
  test('golden: station 1 starts with the struck level', () => {
    expect(numbers({ ...STATIONS, output: 'masses_mg', item: 0, station: 1 })).toEqual([
      '286.4=0.54×34.21×15.5',
      '351=286.4+1×0.54×34.21×3.5',
    ]);
  });
  test('golden: a flush pin adds nothing', () => {
    expect(numbers({ ...STATIONS, output: 'masses_mg', item: 4, station: 5 })).toEqual(['430.5=430.5']);
  });
  test('golden: slug of a disc of 15.5 mm with 5 % springback is 16.275 mm', () => {
    const inputs = { discHeight_mm: 15.5, boreDiameter_mm: 6.6, axialSpringback_pct: 5, radialSpringback_pct: 1 };
    expect(numbers({ entry: 'dosing.released-slug', title: '', inputs, output: 'released_mm' })).toEqual([
      '16.28=15.5×(1+5\u202F%)',
      '6.666=6.6×(1+1\u202F%)',
      '0.775=15.5×5\u202F%',
    ]);
  });
  test('golden: 200 mg x 1.12 / (99.2 % x (1 - 1.5 %)) = 229.25 mg, and its diluent in 430 mg', () => {
    const inputs = { claim_mg: 200, saltFactor_ratio: 1.12, assayAnhydrous_pct: 99.2, water_pct: 1.5, overage_pct: 0 };
    expect(numbers({ entry: 'brief.substance-mass', title: '', inputs, output: 'mass_mg' })).toEqual([
      '229.2=200×1.12×(1+0\u202F%)99.2\u202F%×(1−1.5\u202F%)',
    ]);
    const total = { total_mg: 430, substances_mg: [229.245, 20], otherExcipients_mg: 0 };
    expect(numbers({ entry: 'brief.diluent-of-fixed-total', title: '', inputs: total, output: 'diluent_mg' })).toEqual([
      '180.8=430−∑(229.2 + 20)−0',
    ]);
  });
  test('golden: a step of 0.1 mm on the stop adds 0.54 x 34.21 x 0.1 = 1.847 mg, to either side of 430.45 mg', () => {
    const inputs = { ...STATIONS.inputs, station: 2, step_mm: 0.1 };
    const gain = { entry: 'dosing.disc-step-gain', title: '', inputs, output: 'median_mg_per_step', station: 2 };
    expect(numbers(gain)).toEqual(['1.847=mediangi', '1.847=432.3−428.62', '432.3−428.6=2×1×0.54×34.21×0.1']);
    expect(shown(gain).inDrawing.map(({ field }) => field)).toEqual(['feed-density', 'refill', 'bore-area']);
  });
  test('golden: where a spring yields the step fills no such slice: only the two masses stand there', () => {
    const inputs = { ...STATIONS.inputs, preload_N: 30, station: 4, step_mm: 0.1 };
    const gain = { entry: 'dosing.disc-step-gain', title: '', inputs, output: 'median_mg_per_step', station: 4 };
    expect(numbers(gain).slice(2)).toEqual([
      expect.stringMatching(/^4\d\d\.\d=W\(0\.8\+0\.1\)$/),
      expect.stringMatching(/^4\d\d\.\d=W\(0\.8−0\.1\)$/),
    ]);
  });
  test('golden: spread of its causes: 0.64 + 0.64 + 0.25 + 3.0625 = 4.5925, root 2.143', () => {
    const inputs = { causes_pct: [0.8, 0.8, 0.5, 1.75] };
    expect(numbers({ entry: 'dosing.unit-spread', title: '', inputs, output: 'unit_pct' })).toEqual([
      '2.143=0.82+0.82+0.52+1.752',
    ]);
  });
  test('golden: first weights round 361.2 mg outward to 360, with a shell of 97 mg to 457 mg gross', () => {
    const inputs = { low98_mg: 361.2, high98_mg: 499.7, target_mg: 430, tareMean_mg: 97 };
    expect(numbers({ entry: 'design.first-weights', title: '', inputs, output: 'grossLow_mg' })).toEqual([
      '360=5×⌊361.2/5⌋',
      '457=360+97',
    ]);
  });
  test('golden: letters of a mass stand at feed density, bore, depth and both masses', () => {
    const { inDrawing } = shown({ ...STATIONS, output: 'masses_mg', item: 1, station: 2 });
    expect(inDrawing).toEqual([
      { base: 'ρ', sub: '0', field: 'feed-density' },
      { base: 'f', field: 'refill', station: 2 },
      { base: 'A', field: 'bore-area', station: 2 },
      { base: 'p', sub: '2', field: 'pin-depth', station: 2 },
      { base: 'm', sub: '1', field: 'mass', station: 1 },
      { base: 'm', sub: '2', field: 'mass', station: 2 },
    ]);
  });
  test('golden: force of a pin on its stop 14.89 N at station 1 (check value of the catalogue); density by hand 0.54 x 15.5 / 12', () => {
    expect(numbers({ ...STATIONS, output: 'forces_N', item: 0, station: 1 })).toEqual([
      '0.6975=286.434.21×(15.5−3.5)',
      '0.2258=1−0.540.6975',
      '14.89=34.21×0.22581.6×(0.55−0.2258)',
    ]);
  });
});

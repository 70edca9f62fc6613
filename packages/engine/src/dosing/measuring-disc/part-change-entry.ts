import { defineEntry, type Entry, type ValuesOf } from '#catalogue';
import { boreArea_mm2 } from './bore-area.ts';
import {
  A,
  B,
  BORE,
  CAPTURED,
  DEPTHS,
  FEED,
  GEOMETRY,
  HEIGHT,
  INITIAL,
  PRELOAD,
  RATE,
  REFILL,
  REFILLED,
} from './entry-fields.ts';
import { tampStations } from './tamp-stations.ts';

const INPUTS = [
  ...[FEED, BORE, HEIGHT, DEPTHS, REFILL, CAPTURED, A, B, INITIAL, PRELOAD, RATE, REFILLED],
  { ...BORE, key: 'boreDiameterNext_mm', title: 'bore diameter of the other part', optional: true },
  { ...HEIGHT, key: 'discHeightNext_mm', title: 'disc height of the other part', optional: true },
  { ...B, key: 'bNext_per_MPa', title: 'Kawakita b in that bore', optional: true },
  { ...PRELOAD, key: 'preloadNext_N', title: 'preload of the other springs', optional: true },
  { ...RATE, key: 'rateNext_N_per_mm', title: 'rate of the other springs', optional: true },
] as const;

type Inputs = ValuesOf<typeof INPUTS>;

/** What another disc or another set of springs does to the mass: the number beside each part in stock. */
export const partChangeEntry: Entry = defineEntry({
  id: 'dosing.disc-part-change',
  title: 'What another disc or spring set does to the mass',
  equation: 'w = W_2 - W_1,\\quad W_1 = W(H,D,F_0,k_s),\\quad W_2 = W(H_2,D_2,F_2,k_2)',
  inputs: INPUTS,
  outputs: [
    { key: 'change_mg', title: 'change of the mass', kind: 'number', unit: 'mg' },
    { key: 'before_mg', title: 'mass with the part that is set', kind: 'number', unit: 'mg' },
    { key: 'after_mg', title: 'mass with the other part', kind: 'number', unit: 'mg' },
  ],
  sources: [GEOMETRY],
  validity:
    'Every pin zeroed again, so that its depth below the new disc face is the old one. Scales referred to the base and left as they stand move every pin by the difference of the heights: see the setting sheet.',
  restsOn: 'the station model, run twice at the means',
  compute: (inputs) => {
    const before_mg = massOf_mg(inputs);
    const after_mg = massOf_mg({
      ...inputs,
      boreDiameter_mm: inputs.boreDiameterNext_mm ?? inputs.boreDiameter_mm,
      discHeight_mm: inputs.discHeightNext_mm ?? inputs.discHeight_mm,
      b_per_MPa: inputs.bNext_per_MPa ?? inputs.b_per_MPa,
      preload_N: inputs.preloadNext_N ?? inputs.preload_N,
      rate_N_per_mm: inputs.rateNext_N_per_mm ?? inputs.rate_N_per_mm,
    });
    return { change_mg: after_mg - before_mg, before_mg, after_mg };
  },
});

function massOf_mg(inputs: Inputs): number {
  const { boreDiameter_mm, a_frac, b_per_MPa, initialDensity_g_per_mL } = inputs;
  const { captured_mg = 0, isRefilledAfterLastPin = true } = inputs;
  const law = { kind: 'kawakita', a_frac, b_per_MPa, initialDensity_g_per_mL } as const;
  const run = { ...inputs, boreArea_mm2: boreArea_mm2(boreDiameter_mm), captured_mg, law, isRefilledAfterLastPin };
  return tampStations(run).at(-1)?.mass_mg ?? NaN;
}

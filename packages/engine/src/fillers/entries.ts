import { defineEntry, type Entry } from '#catalogue';
import type { PinAxis, StationScale } from './filler.ts';
import { depthOfReading_mm } from './scale.ts';
import { repeatStrokeCount } from './repeat-stroke-count.ts';

export const entries: readonly Entry[] = [
  defineEntry({
    id: 'fillers.depth-of-reading',
    title: 'Pin depth below the disc top from a scale reading',
    equation: 'p = (H - H_0) + s\\,q\\,(r - r_0)',
    inputs: [
      { key: 'discHeight_mm', title: 'height of the mounted disc', kind: 'number', unit: 'mm', above: 0, max: 60 },
      {
        key: 'zeroDiscHeight_mm',
        title: 'height of the disc at the zero check',
        kind: 'number',
        unit: 'mm',
        above: 0,
        max: 60,
      },
      { key: 'reading_division', title: 'reading', kind: 'number', unit: 'division' },
      { key: 'zeroReading_division', title: 'reading at which the pin is flush', kind: 'number', unit: 'division' },
      {
        key: 'pitch_mm_per_division',
        title: 'travel of one division',
        kind: 'number',
        unit: 'mm/division',
        above: 0,
        max: 10,
      },
      { key: 'isDeeperUp', title: 'a larger reading is a deeper pin', kind: 'flag' },
      { key: 'isReferredToBase', title: 'pins are set against the plate below the disc', kind: 'flag' },
    ],
    outputs: [{ key: 'depth_mm', title: 'depth below the disc top', kind: 'number', unit: 'mm' }],
    sources: [{ text: "this project's convention: depth is positive downwards", read: 'geometry' }],
    validity:
      'Approached always from the same side; half the backlash counts as one standard deviation of the setting.',
    restsOn: 'the last zero check',
    compute: ({ discHeight_mm, zeroDiscHeight_mm, reading_division, isDeeperUp, isReferredToBase, ...of }) => {
      const scale: StationScale = {
        ...of,
        station: 1,
        deeperIs: isDeeperUp ? 1 : -1,
        step_division: 0.1,
        backlash_division: 0,
      };
      const machineRange = { min_mm: 0, max_mm: 60 };
      const axis: PinAxis = {
        machineRange,
        referredTo: isReferredToBase ? 'base' : 'disc-top',
        zeroDiscHeight_mm,
        scales: [scale],
      };
      return { depth_mm: depthOfReading_mm({ axis, scale, discHeight_mm }, reading_division) };
    },
  }),
  defineEntry({
    id: 'fillers.repeat-strokes',
    title: 'Strokes after which the same dosing group meets the same carrier again',
    equation: 'n = \\operatorname{lcm}(g, c)',
    inputs: [
      { key: 'groupCount', title: 'dosing groups of the disc', kind: 'integer', unit: '1', min: 1, max: 1000 },
      { key: 'carrierCount', title: 'carriers of the turret', kind: 'integer', unit: '1', min: 1, max: 1000 },
    ],
    outputs: [
      { key: 'strokeCount', title: 'strokes', kind: 'integer', unit: '1' },
      { key: 'isAliased', title: 'some pairs never meet: their effects cannot be told apart', kind: 'flag' },
    ],
    sources: [{ text: 'indexing of two wheels by one pitch per stroke', read: 'geometry' }],
    validity: 'Both advance by one pitch per stroke. Fewer strokes than groups x carriers: aliased for ever.',
    restsOn: 'arithmetic',
    compute: ({ groupCount, carrierCount }) => {
      const strokeCount = repeatStrokeCount({ groupCount, carrierCount });
      return { strokeCount, isAliased: strokeCount < groupCount * carrierCount };
    },
  }),
];

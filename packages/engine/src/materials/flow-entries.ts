import { defineEntry, type Entry } from '#catalogue';
import { compressibilityIndex_pct } from './compressibility-index.ts';
import { BULK_AND_TAPPED, FLOW_GRADE, GAPS, INDEX, USP_1174 } from './entry-fields.ts';
import { flowGradeByIndex } from './flow-grade-by-index.ts';
import { flowGradeByRepose } from './flow-grade-by-repose.ts';
import { FLOW_SCALE, type FlowBand, type FlowGrade } from './flow-scale.table.ts';
import { hausnerFromIndex_ratio } from './hausner-from-index.ts';
import { hausner_ratio } from './hausner.ts';

const HAUSNER = { key: 'hausner_ratio', title: 'Hausner ratio', kind: 'number', unit: '1' } as const;

function bandOf(grade: FlowGrade): FlowBand {
  return FLOW_SCALE.find((band) => band.grade === grade)!;
}

export const flowEntries: readonly Entry[] = [
  defineEntry({
    id: 'materials.flow-indices',
    title: 'Compressibility index and Hausner ratio',
    equation: 'CI = 100\\,\\frac{\\rho_t-\\rho_b}{\\rho_t},\\qquad H = \\frac{\\rho_t}{\\rho_b}',
    inputs: BULK_AND_TAPPED,
    outputs: [{ key: 'compressibilityIndex_pct', title: 'compressibility index', kind: 'number', unit: '%' }, HAUSNER],
    sources: [USP_1174],
    validity:
      'Both depend on cylinder, mass and tap count (10, 500, 1250 taps): compare only results taken the same way. Tapped density is that after the volume has stopped falling. A tapped density below the poured one is refused.',
    restsOn: 'two densities measured in one cylinder',
    compute: (densities) => ({
      compressibilityIndex_pct: compressibilityIndex_pct(densities),
      hausner_ratio: hausner_ratio(densities),
    }),
  }),
  defineEntry({
    id: 'materials.hausner-from-index',
    title: 'Hausner ratio from the compressibility index',
    equation: 'H = \\frac{1}{1-CI/100}',
    inputs: [INDEX],
    outputs: [HAUSNER],
    sources: [{ text: 'follows from the two definitions in USP <1174> Powder Flow', read: 'seen' }],
    validity:
      'Exact. The printed Hausner bands follow it to 0.008 only (index 25 is 1.333, that band ends at 1.34): grade by one of the two scales, never by both.',
    restsOn: 'exact arithmetic',
    compute: ({ compressibilityIndex_pct: index_pct }) => ({ hausner_ratio: hausnerFromIndex_ratio(index_pct) }),
  }),
  defineEntry({
    id: 'materials.flow-band',
    title: 'Printed bands of index and Hausner ratio for a grade of flow',
    equation: '\\text{table lookup}',
    inputs: [FLOW_GRADE],
    outputs: [
      { key: 'compressibilityIndexLower_pct', title: 'index from', kind: 'number', unit: '%' },
      { key: 'compressibilityIndexUpper_pct', title: 'index to', kind: 'number', unit: '%', optional: true },
      { key: 'hausnerLower_ratio', title: 'Hausner ratio from', kind: 'number', unit: '1' },
      { key: 'hausnerUpper_ratio', title: 'Hausner ratio to', kind: 'number', unit: '1', optional: true },
    ],
    sources: [USP_1174],
    validity:
      'As printed, on whole numbers, with gaps between the bands; the worst band has no upper end (printed above 38 % and 1.60).',
    restsOn: 'a convention of the pharmacopoeia; it predicts no machine',
    compute: ({ grade }) => {
      const { reposeLower_deg: _lower, reposeUpper_deg: _upper, grade: _grade, ...band } = bandOf(grade);
      return band;
    },
  }),
  defineEntry({
    id: 'materials.repose-band',
    title: 'Printed band of the angle of repose for a grade of flow',
    equation: '\\text{table lookup}',
    inputs: [FLOW_GRADE],
    outputs: [
      { key: 'reposeLower_deg', title: 'angle of repose from', kind: 'number', unit: 'deg' },
      { key: 'reposeUpper_deg', title: 'angle of repose to', kind: 'number', unit: 'deg', optional: true },
    ],
    sources: [USP_1174],
    validity:
      'Heap on a fixed base. Up to 40 degrees no aid is needed, 41-45 may hang up, from 46 the powder must be agitated or vibrated; above 50 it is rarely acceptable for manufacture. The worst band has no upper end.',
    restsOn: 'a convention of the pharmacopoeia; the angle depends on how the heap is made',
    compute: ({ grade }) => {
      const { reposeLower_deg, reposeUpper_deg } = bandOf(grade);
      return { reposeLower_deg, ...(reposeUpper_deg === undefined ? {} : { reposeUpper_deg }) };
    },
  }),
  defineEntry({
    id: 'materials.flow-grade-by-index',
    title: 'Grade of flow by the compressibility index',
    equation: 'CI \\le 10,\\ \\le 15,\\ \\le 20,\\ \\le 25,\\ \\le 31,\\ \\le 37,\\ \\text{above}',
    inputs: [INDEX],
    outputs: [FLOW_GRADE],
    sources: [USP_1174, GAPS],
    validity:
      'Grade by one scale only: index, Hausner ratio and angle of repose do not agree at the edges. Better flow is not always better dosing: a slug and an arch need some cohesion.',
    restsOn: 'a convention of the pharmacopoeia; it predicts no machine',
    compute: ({ compressibilityIndex_pct: index_pct }) => ({ grade: flowGradeByIndex(index_pct) }),
  }),
  defineEntry({
    id: 'materials.flow-grade-by-repose',
    title: 'Grade of flow by the angle of repose',
    equation: '\\alpha \\le 30,\\ \\le 35,\\ \\le 40,\\ \\le 45,\\ \\le 55,\\ \\le 65,\\ \\text{above}',
    inputs: [{ key: 'repose_deg', title: 'angle of repose', kind: 'number', unit: 'deg', above: 0, below: 90 }],
    outputs: [FLOW_GRADE],
    sources: [USP_1174, GAPS],
    validity:
      'Heap on a fixed base; the printed scale starts at 25 degrees, below that the grade stays excellent. Grade by one scale only.',
    restsOn: 'a convention of the pharmacopoeia; the angle depends on how the heap is made',
    compute: ({ repose_deg }) => ({ grade: flowGradeByRepose(repose_deg) }),
  }),
];

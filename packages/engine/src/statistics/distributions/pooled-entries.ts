import {
  noncentralStudentCdf,
  noncentralStudentQuantile,
  noncentralStudentSurvival,
  studentizedRangeCdf,
  studentizedRangeQuantile,
  studentizedRangeSurvival,
} from '@fillwright/stats/distributions';
import type { Entry } from '#catalogue';
import { DEGREES_FROM_ONE, X } from './fields.ts';
import { lawEntries } from './law-entries.ts';

/** Laws that are means over an estimated standard deviation. */
export const pooledEntries: readonly Entry[] = [
  ...lawEntries({
    id: 'noncentral-student',
    title: 'noncentral t law',
    letters: ['T', 'x'],
    equation: 'T = \\frac{Z+\\delta}{\\sqrt{\\chi^2_\\nu/\\nu}}',
    variable: X,
    parameters: [
      DEGREES_FROM_ONE,
      { key: 'noncentrality_ratio', title: 'noncentrality δ', kind: 'number', unit: '1', min: -1e4, max: 1e4 },
    ],
    sources: [
      { text: 'N. L. Johnson, B. L. Welch (1940), Biometrika 31, 362-389 (definition)', read: 'from memory' },
      { text: 'H. Takahasi, M. Mori (1974), Publ. RIMS 9, 721-741 (integration)', read: 'from memory' },
    ],
    validity: 'Relative error below 1e-10 of either probability, down to 1e-250.',
    lower_frac: ({ degreesOfFreedom_ratio: degreesOfFreedom, noncentrality_ratio: noncentrality }, x) =>
      noncentralStudentCdf({ x, degreesOfFreedom, noncentrality }),
    upper_frac: ({ degreesOfFreedom_ratio: degreesOfFreedom, noncentrality_ratio: noncentrality }, x) =>
      noncentralStudentSurvival({ x, degreesOfFreedom, noncentrality }),
    quantile_ratio: (
      { degreesOfFreedom_ratio: degreesOfFreedom, noncentrality_ratio: noncentrality },
      { p_ratio, tail },
    ) => noncentralStudentQuantile({ p: p_ratio, degreesOfFreedom, noncentrality, tail }),
  }),
  ...lawEntries({
    id: 'studentized-range',
    title: 'studentised range',
    letters: ['Q', 'x'],
    equation: 'Q = \\frac{\\operatorname{max} Z - \\operatorname{min} Z}{\\sqrt{\\chi^2_\\nu/\\nu}}',
    variable: X,
    parameters: [
      { key: 'groupCount', title: 'number of values or means', kind: 'integer', unit: '1', min: 2, max: 1000 },
      DEGREES_FROM_ONE,
    ],
    sources: [
      { text: 'H. O. Hartley (1942), Biometrika 32, 334-348 (definition)', read: 'from memory' },
      { text: 'H. Takahasi, M. Mori (1974), Publ. RIMS 9, 721-741 (integration)', read: 'from memory' },
    ],
    validity: 'Absolute error below 1e-10, relative error below 1e-8.',
    lower_frac: ({ groupCount, degreesOfFreedom_ratio: degreesOfFreedom }, x) =>
      studentizedRangeCdf({ x, groupCount, degreesOfFreedom }),
    upper_frac: ({ groupCount, degreesOfFreedom_ratio: degreesOfFreedom }, x) =>
      studentizedRangeSurvival({ x, groupCount, degreesOfFreedom }),
    quantile_ratio: ({ groupCount, degreesOfFreedom_ratio: degreesOfFreedom }, { p_ratio, tail }) =>
      studentizedRangeQuantile({ p: p_ratio, groupCount, degreesOfFreedom, tail }),
  }),
];

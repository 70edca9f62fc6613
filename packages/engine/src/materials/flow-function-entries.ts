import { defineEntry, type Entry } from '#catalogue';
import { JENIKE } from './entry-fields.ts';
import { flowFunctionGrade } from './flow-function-grade.ts';
import { FLOW_FUNCTION_GRADES, FLOW_FUNCTION_SCALE } from './flow-function-scale.table.ts';

const GRADE = {
  key: 'grade',
  title: 'flowability by flow function',
  kind: 'choice',
  choices: FLOW_FUNCTION_GRADES,
} as const;
const VALIDITY =
  'The coefficient depends on the consolidation stress: quote it near that of the process (hopper 1-5 kPa, plug 0.1-5 MPa). Values at unlike stresses must not be compared.';

export const flowFunctionEntries: readonly Entry[] = [
  defineEntry({
    id: 'materials.flow-function-band',
    title: 'Band of the flow function coefficient for a flowability',
    equation: 'ff_c = \\frac{\\sigma_1}{f_c},\\ \\text{table lookup}',
    inputs: [GRADE],
    outputs: [
      { key: 'lower_ratio', title: 'coefficient from', kind: 'number', unit: '1' },
      { key: 'upper_ratio', title: 'coefficient to', kind: 'number', unit: '1', optional: true },
    ],
    sources: [JENIKE],
    validity: `${VALIDITY} The best band has no upper end.`,
    restsOn: 'a convention of powder mechanics on shear-cell results',
    compute: ({ grade }) => {
      const { lower_ratio, upper_ratio } = FLOW_FUNCTION_SCALE.find((band) => band.grade === grade)!;
      return { lower_ratio, ...(upper_ratio === undefined ? {} : { upper_ratio }) };
    },
  }),
  defineEntry({
    id: 'materials.flow-function-grade',
    title: 'Flowability by the flow function coefficient',
    equation: 'ff_c = \\frac{\\sigma_1}{f_c}:\\ <1,\\ \\le 2,\\ \\le 4,\\ \\le 10,\\ \\text{above}',
    inputs: [
      {
        key: 'flowFunction_ratio',
        title: 'consolidation stress over unconfined strength',
        kind: 'number',
        unit: '1',
        above: 0,
        max: 10000,
      },
    ],
    outputs: [GRADE],
    sources: [
      JENIKE,
      { text: 'a value on a limit counts as more cohesive; our choice', read: 'common practice, no source' },
    ],
    validity: VALIDITY,
    restsOn: 'a convention of powder mechanics on shear-cell results',
    compute: ({ flowFunction_ratio }) => ({ grade: flowFunctionGrade(flowFunction_ratio) }),
  }),
];

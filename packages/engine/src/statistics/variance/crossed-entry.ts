import { crossedComponents } from '@fillwright/stats/variance';
import { defineEntry, DomainError, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { CONFIDENCE, GRAYBILL_WANG, place, REML, SEARLE, table, TING, VALUES } from './fields.ts';
import { inPlaces } from './in-places.ts';

const TESTS = 'rows, columns, interaction';
const ORDER = `${TESTS}, within cells`;
const THREE = { kind: 'number', unit: '1', list: { min: 3, max: 3 } } as const;
const FIVE = { kind: 'number', unit: 'data2', list: { min: 5, max: 5 } } as const;
const FOUR = { kind: 'number', unit: 'data2', list: { min: 4, max: 4 } } as const;

export const crossedEntry: Entry = defineEntry({
  id: 'statistics.crossed-components',
  title: 'Variance of rows, of columns, of their interaction and within cells',
  equation:
    '\\sigma_R^2 = \\frac{MS_R-MS_I}{n\\,c},\\quad \\sigma_C^2 = \\frac{MS_C-MS_I}{n\\,r},\\quad \\sigma_I^2 = \\frac{MS_I-MS_W}{n}',
  inputs: [
    {
      key: 'cells',
      title: 'cells: every one of r rows and c columns, each with n values',
      kind: 'group',
      list: { min: 4, max: 10_000 },
      fields: [place('rowCount', 'number of the row'), place('columnCount', 'number of the column'), VALUES],
    },
    CONFIDENCE,
  ],
  outputs: [
    ...table(4, ORDER),
    { key: 'statistics_ratio', title: `test statistics F: ${TESTS}`, ...THREE },
    { key: 'p_frac', title: `p values: ${TESTS}`, ...THREE },
    { key: 'components_data2', title: `variances as estimated, maybe negative: ${ORDER}`, ...FOUR },
    { key: 'truncated_data2', title: `variances, 0 if negative: ${ORDER}`, ...FOUR },
    { key: 'isReml', title: 'none is negative: REML says the same', kind: 'flag' },
    { key: 'reml_data2', title: `variances by REML, up to 400 cells: ${ORDER}`, ...FOUR, optional: true },
    { key: 'low_data2', title: `lower limits: ${ORDER}, all together`, ...FIVE },
    { key: 'high_data2', title: `upper limits: ${ORDER}, all together`, ...FIVE },
  ],
  sources: [SEARLE, REML, GRAYBILL_WANG, TING],
  validity:
    'Both factors drawn by chance from many. Stations of one machine are fixed: their test against the interaction stands, their variance is that of no population.',
  restsOn: 'p, REML and limits: normal values; the estimates need no law',
  compute: ({ cells, confidence_frac: confidence = 0.95 }) =>
    fromStats(() => {
      const table = inPlaces(cells, ({ rowCount }) => rowCount).map((row) => inPlaces(row, (cell) => cell.columnCount));
      const columns = table[0]?.map(([cell]) => cell?.columnCount) ?? [];
      for (const row of table) {
        if (
          row.length !== columns.length ||
          row.some((found, j) => found.length > 1 || found[0]?.columnCount !== columns[j])
        )
          throw new DomainError('out-of-range', {
            reason: 'wrong-length',
            rowCount: table.length,
            columnCount: columns.length,
          });
      }
      const found = crossedComponents({
        ...{ cells: table.map((row) => row.map((cell) => cell[0]?.values_data ?? [])), confidence },
      });
      return {
        degreesOfFreedom: [...found.degreesOfFreedom],
        sumsOfSquares_data2: [...found.sumsOfSquares],
        meanSquares_data2: [...found.meanSquares],
        ...{ statistics_ratio: [...found.f], p_frac: [...found.p] },
        ...{ components_data2: [...found.components], truncated_data2: [...found.truncated], isReml: found.isReml },
        ...(found.reml && { reml_data2: [...found.reml] }),
        ...{ low_data2: [...found.low, found.total.low], high_data2: [...found.high, found.total.high] },
      };
    }),
});

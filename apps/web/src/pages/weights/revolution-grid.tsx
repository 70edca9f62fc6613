import type { PlaceMean, Revolution } from '@fillwright/engine/weights';
import { WEIGHTS_PAGE_WORDS, WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { NumberGroup } from '../../drawing/index.ts';
import { PageNumber } from '../../numbers/index.ts';
import { capsuleNumber } from './numbers/capsule-number.ts';
import { meanNumber } from './numbers/mean-number.ts';
import type { Weighed } from './numbers/weighed.ts';

const words = WEIGHTS_VERDICT_WORDS.revolution;
const whole = (mass_mg: number): string => WEIGHTS_PAGE_WORDS.mg(mass_mg, 0);
const isOddAt = (places: readonly PlaceMean[], at: number): boolean =>
  places.some(({ index, isOdd }) => isOdd && index === at + 1);

interface GridProps {
  readonly revolution: Revolution;
  /** Cells open; left out: as on paper. */
  readonly weighed?: Weighed;
}

/** One full revolution, group by column, the odd one marked. */
export function RevolutionGrid({ revolution, weighed }: GridProps): ReactNode {
  const { cells_mg, columns } = revolution;
  const oddColumns = columns.filter(({ isOdd }) => isOdd).map(({ index }) => String(index));
  const odd = (column: number): string | undefined => (isOddAt(columns, column) ? 'grid-odd' : undefined);
  return (
    <section className="weights-grid">
      <h3>{words.title}</h3>
      <div className="grid-scroll" role="region" aria-label={words.title} tabIndex={0}>
        <NumberGroup as="table">
          <thead>
            <tr>
              <th scope="col">{words.column}</th>
              {(cells_mg[0] ?? []).map((_, column) => (
                <th key={column} scope="col" className={odd(column)}>
                  {isOddAt(columns, column) ? <Odd /> : null}
                  {column + 1}
                </th>
              ))}
              <th scope="col" className="quiet">
                {oddColumns.length === 0 ? words.mean : words.meanWithout(oddColumns.join(', '))}
              </th>
            </tr>
          </thead>
          <tbody>
            {cells_mg.map((_, group) => (
              <Group key={group} {...{ revolution, weighed, group }} />
            ))}
            <tr className="grid-means">
              <th scope="row">{words.mean}</th>
              {(cells_mg[0] ?? []).map((_, column) => (
                <td key={column} className={odd(column)}>
                  <Mean
                    {...{ weighed, masses_mg: cells_mg.map((row) => row[column] ?? null) }}
                    name={words.columnName(column + 1)}
                  />
                </td>
              ))}
              <td className="quiet">{whole(revolution.restMean_mg)}</td>
            </tr>
          </tbody>
        </NumberGroup>
      </div>
    </section>
  );
}

interface GroupProps {
  readonly revolution: Revolution;
  readonly weighed: Weighed | undefined;
  /** From 0: no unit. */
  readonly group: number;
}

function Group({ revolution, weighed, group }: GroupProps): ReactNode {
  const { cells_mg, columns, groups, bores } = revolution;
  const row = cells_mg[group] ?? [];
  const isOddBore = (column: number): boolean =>
    bores.some((bore) => bore.isOdd && bore.group === group + 1 && bore.column === column + 1);
  const isOddGroup = isOddAt(groups, group);
  return (
    <tr className={isOddGroup ? 'grid-odd' : undefined}>
      <th scope="row">
        {isOddGroup ? <Odd /> : null}
        {words.group(group + 1)}
      </th>
      {row.map((cell_mg, column) => (
        <td
          key={column}
          className={isOddAt(columns, column) ? 'grid-odd' : isOddBore(column) ? 'grid-odd-bore' : undefined}
        >
          {isOddBore(column) ? <Odd /> : null}
          <Cell {...{ weighed, cell_mg }} at={{ group: group + 1, column: column + 1 }} />
        </td>
      ))}
      <td className="quiet">
        <Mean
          {...{ weighed, masses_mg: row.filter((_, column) => !isOddAt(columns, column)) }}
          name={words.group(group + 1)}
        />
      </td>
    </tr>
  );
}

interface MeanProps {
  readonly weighed: Weighed | undefined;
  readonly masses_mg: readonly (number | null)[];
  readonly name: string;
}

function Mean({ weighed, masses_mg, name }: MeanProps): ReactNode {
  const known = masses_mg.filter((mass_mg): mass_mg is number => mass_mg !== null);
  const mean_mg = known.reduce((sum, mass_mg) => sum + mass_mg, 0) / known.length;
  if (!weighed || known.length < 2) return whole(mean_mg);
  return <PageNumber number={meanNumber(known, { name, mean_mg })}>{whole(mean_mg)}</PageNumber>;
}

interface CellProps {
  readonly weighed: Weighed | undefined;
  readonly cell_mg: number | null;
  readonly at: { readonly group: number; readonly column: number };
}

function Cell({ weighed, cell_mg, at }: CellProps): ReactNode {
  if (cell_mg === null) return '–';
  const index = weighed?.places.findIndex(({ group, column }) => group === at.group && column === at.column) ?? -1;
  if (!weighed || index < 0) return whole(cell_mg);
  return <PageNumber number={capsuleNumber(weighed, index)}>{whole(cell_mg)}</PageNumber>;
}

function Odd(): ReactNode {
  return (
    <>
      <span aria-hidden="true">▲</span>
      <span className="hidden-text">{words.odd} </span>
    </>
  );
}

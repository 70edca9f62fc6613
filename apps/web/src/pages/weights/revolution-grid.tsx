import type { CauseLeft, Revolution } from '@fillwright/engine/weights';
import { adjusterName, WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { CauseGrid } from '../../charts/index.ts';

const words = WEIGHTS_PAGE_WORDS.revolution;
const whole = (mass_mg: number): string => WEIGHTS_PAGE_WORDS.mg(mass_mg, 0);

/** One full revolution, group by column, the odd one marked. */
export function RevolutionGrid({ revolution }: { readonly revolution: Revolution }): ReactNode {
  const { cells_mg, columns, groups, bores } = revolution;
  const isOddColumn = (at: number): boolean => columns.some(({ index, isOdd }) => isOdd && index === at + 1);
  const isOddGroup = (at: number): boolean => groups.some(({ index, isOdd }) => isOdd && index === at + 1);
  const isOddBore = (group: number, column: number): boolean =>
    bores.some((bore) => bore.isOdd && bore.group === group + 1 && bore.column === column + 1);
  const odd = (is: boolean): string | undefined => (is ? 'grid-odd' : undefined);
  return (
    <section className="weights-grid">
      <h3>{words.title}</h3>
      <div className="grid-scroll" role="region" aria-label={words.title} tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.column}</th>
              {(cells_mg[0] ?? []).map((_, column) => (
                <th key={column} scope="col" className={odd(isOddColumn(column))}>
                  {isOddColumn(column) ? <Odd /> : null}
                  {column + 1}
                </th>
              ))}
              <th scope="col">{words.mean}</th>
            </tr>
          </thead>
          <tbody>
            {cells_mg.map((row, group) => (
              <tr key={group} className={odd(isOddGroup(group))}>
                <th scope="row">
                  {isOddGroup(group) ? <Odd /> : null}
                  {words.group(group + 1)}
                </th>
                {row.map((cell_mg, column) => (
                  <td key={column} className={odd(isOddColumn(column) || isOddBore(group, column))}>
                    {isOddBore(group, column) ? <Odd /> : null}
                    {cell_mg === null ? '–' : whole(cell_mg)}
                  </td>
                ))}
                <td className="quiet">{whole(groups[group]?.net_mg ?? NaN)}</td>
              </tr>
            ))}
            <tr>
              <th scope="row">{words.mean}</th>
              {columns.map(({ index, net_mg }) => (
                <td key={index} className={odd(isOddColumn(index - 1))}>
                  {whole(net_mg)}
                </td>
              ))}
              <td />
            </tr>
          </tbody>
        </table>
      </div>
    </section>
  );
}

function Odd(): ReactNode {
  return (
    <>
      <span aria-hidden="true">▲</span>
      <span className="hidden-text">{words.odd} </span>
    </>
  );
}

/** What each cause would leave, as tiny grids. */
export function Causes({ causes }: { readonly causes: readonly CauseLeft[] }): ReactNode {
  if (causes.length === 0) return null;
  return (
    <section className="weights-causes">
      <h3>{words.causes}</h3>
      <ul>
        {causes.slice(0, 5).map((left, i) => (
          <li key={i}>
            <CauseGrid cells={cellsOf(left)} isLikely={left.isLikely} />
            <strong>{nameOf(left)}</strong> <span>{left.isLikely ? words.fits : words.fitsLess}</span>
            <span className="quiet">{whole(left.change_mg)} mg</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function nameOf({ cause }: CauseLeft): string {
  if (cause.adjuster !== undefined) return words.stuck(adjusterName(cause.adjuster));
  return cause.kind === 'column' ? words.column : words.kinds[cause.kind];
}

/** A cell is hit where it would differ from most of the others by more than half of the change. */
function cellsOf({ expected_mg, change_mg }: CauseLeft): readonly (readonly { readonly isHit: boolean }[])[] {
  const all = expected_mg.flat().sort((a, b) => a - b);
  const usual_mg = all[all.length >> 1] ?? 0;
  return expected_mg.map((row) =>
    row.map((cell_mg) => ({ isHit: Math.abs(cell_mg - usual_mg) > Math.abs(change_mg) / 2 })),
  );
}

import { memo, type KeyboardEvent, type ReactNode } from 'react';
import type { Candidate, CandidateDetails, Design, SearchInput } from '@fillwright/engine/design';
import { FILL_WORDS } from '@fillwright/words/en';
import { quantityForReading } from '@fillwright/words/numbers';
import { NumberGroup, short } from '../../drawing/index.ts';
import type { Workbench } from '../../state/index.ts';
import { candidateRows, type CandidateRow } from './candidate-rows.ts';
import { PageNumber, type NumberKey } from '../../numbers/index.ts';
import { Rejections } from './rejections.tsx';
import './candidates.css';

interface CandidatesProps {
  readonly input: SearchInput;
  readonly design: Design;
  readonly candidate: Candidate;
  readonly sheet: CandidateDetails['sheet'];
  readonly isSearching: boolean;
  readonly compared: number | undefined;
  /** Left out: for reading only. */
  readonly take: Workbench['take'] | undefined;
  readonly compare: (rank: number | undefined) => void;
}

const { candidateColumns: COLUMNS } = FILL_WORDS;
const FIGURES = ['means', 'capsules', 'spread', 'free', 'force', 'change'] as const;

/** The ranked set-ups, best first: switch between them (also by 1, 2, 3 …), compare, and see what decided. */
export const Candidates = memo(function Candidates(props: CandidatesProps): ReactNode {
  const { input, design, candidate, sheet, isSearching, take } = props;
  const rows = candidateRows(design, { candidate, sheet });
  const target = quantityForReading(design.target.fill_mg, 'mg', { decimals: 0 });
  const { meanAction_pct, individualAction_pct } = input.brief.inProcess;
  const onKeyDown = (event: KeyboardEvent): void => {
    const rank = Number(event.key);
    if (event.ctrlKey || event.metaKey || event.altKey || !design.candidates.some((one) => one.rank === rank)) return;
    event.preventDefault();
    take?.(rank);
  };
  return (
    <section className="candidates" aria-labelledby="candidates-title" onKeyDown={onKeyDown}>
      <h2 id="candidates-title">{FILL_WORDS.candidates({ count: design.candidates.length, target })}</h2>
      <div className="candidates-scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">{COLUMNS.settings}</th>
              {FIGURES.map((key) => (
                <th key={key} scope="col" className="candidates-figure">
                  {COLUMNS[key]}
                </th>
              ))}
            </tr>
          </thead>
          {rows.map((row) => (
            <Row key={row.rank ?? 0} {...props} row={row} />
          ))}
        </table>
      </div>
      <p className="quiet">
        {isSearching ? `${FILL_WORDS.searching} ` : ''}
        {FILL_WORDS.columnsAbout({ mean: short(meanAction_pct), single: short(individualAction_pct) })}{' '}
        {design.behind.length > 0 ? FILL_WORDS.behind(design.behind.length) : ''}
      </p>
      <Rejections rejections={design.rejections} />
    </section>
  );
});

function Row({ row, take, compare, compared }: CandidatesProps & { readonly row: CandidateRow }): ReactNode {
  const { rank, decided, isChosen } = row;
  const isCompared = rank !== undefined && rank === compared;
  const comparing = isCompared ? FILL_WORDS.comparing(rank) : '';
  const about = [`${FILL_WORDS.inSize(row.size)}, ${row.parts}`, decided, comparing];
  return (
    <tbody className={isChosen ? 'candidate candidate-chosen' : 'candidate'}>
      <NumberGroup as="tr">
        <th scope="rowgroup">
          <Take row={row} take={take} />
        </th>
        {FIGURES.map((key) => (
          <td key={key} className="candidates-figure">
            <Figure row={row} of={key} />
          </td>
        ))}
      </NumberGroup>
      <tr className="candidate-why">
        <td colSpan={FIGURES.length + 1}>
          {rank === undefined || isChosen || !take ? null : (
            <button
              type="button"
              className="candidate-compare"
              aria-label={FILL_WORDS.compareLabel(rank, isCompared)}
              aria-pressed={isCompared}
              onClick={() => {
                compare(isCompared ? undefined : rank);
              }}
            >
              {isCompared ? FILL_WORDS.stopComparing : FILL_WORDS.compare}
            </button>
          )}
          {about.filter((text) => text !== '').join('; ')}
        </td>
      </tr>
    </tbody>
  );
}

/** A figure of a set-up; what is computed opens, of the one that is drawn or of another. */
function Figure({ row, of }: { readonly row: CandidateRow; readonly of: (typeof FIGURES)[number] }): ReactNode {
  const numbers: Partial<Record<typeof of, NumberKey>> = {
    ...{ means: 'outside-means', capsules: 'outside-capsules', spread: 'spread', free: 'slug-free' },
    ...(row.hardestStation === undefined ? {} : { force: `force:${row.hardestStation}` }),
  };
  const number = numbers[of];
  if (number === undefined) return row[of];
  return (
    <PageNumber number={number} rank={row.isChosen ? undefined : row.rank}>
      {row[of]}
    </PageNumber>
  );
}

/** Name of a set-up; pressed, it is taken. */
function Take({ row, take }: { readonly row: CandidateRow; readonly take: CandidatesProps['take'] }): ReactNode {
  const { rank, size, parts, settings, isChosen } = row;
  const name = (
    <>
      <b className="candidate-rank">{rank ?? FILL_WORDS.asSet}</b> {settings}
    </>
  );
  if (rank === undefined || !take) return <span className="candidate-take">{name}</span>;
  return (
    <button
      type="button"
      className="candidate-take"
      aria-pressed={isChosen}
      aria-label={FILL_WORDS.candidateLabel({ rank, size, parts, pins: settings })}
      onClick={() => {
        take(rank);
      }}
    >
      {name}
    </button>
  );
}

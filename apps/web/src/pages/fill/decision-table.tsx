import { memo, type ReactNode } from 'react';
import type { CandidateDetails } from '@fillwright/engine/design';
import { adjusterName, FILL_WORDS } from '@fillwright/words/en';
import { fixed } from '../../drawing/index.ts';
import type { Decision, DecisionZone } from './decision-zones.ts';
import { isSameAxis, type ForecastView } from './forecast-view.ts';

type Expected = CandidateDetails['expected'];

interface TableProps {
  readonly view: ForecastView;
  readonly expected: Expected;
}

function isSameTable(one: TableProps, other: TableProps): boolean {
  return one.expected === other.expected && isSameAxis(one, other);
}

/** The strip as a table: what a screen reader reads, and what a phone shows. */
export const DecisionTable = memo(function DecisionTable({ view, expected }: TableProps): ReactNode {
  return (
    <div className="decision-list">
      <table className="decision-table">
        <caption className="hidden-text">{FILL_WORDS.zoneTable}</caption>
        <tbody>
          {[...view.zones].reverse().map((zone, i) => (
            <tr key={zone.from_mg} className={`decision-row-${zone.decision}`}>
              <th scope="row">{rangeText(zone, { isFirst: i === view.zones.length - 1, isLast: i === 0 })}</th>
              <td>{rowText(zone.decision, expected)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}, isSameTable);

function rangeText(
  { from_mg, to_mg }: DecisionZone,
  { isFirst, isLast }: { readonly isFirst: boolean; readonly isLast: boolean },
): string {
  if (isLast) return FILL_WORDS.over(fixed(from_mg, 0));
  if (isFirst) return FILL_WORDS.under(fixed(to_mg, 0));
  return `${fixed(from_mg, 0)}\u2013${fixed(to_mg, 0)}`;
}

function rowText(decision: Decision, { under, over }: Expected): string {
  const { zoneRows } = FILL_WORDS;
  if (decision === 'stop' || decision === 'leave-alone') return zoneRows[decision];
  const correction = decision === 'deeper' ? under : over;
  if (!correction) return zoneRows.noAdjuster;
  return zoneRows[decision]({
    adjuster: adjusterName(correction.adjuster),
    gain: fixed(correction.change_mg_per_step, 1),
  });
}

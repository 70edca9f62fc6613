import { adjusterName, SHEET_WORDS } from '@fillwright/words/en';
import type { CSSProperties, ReactNode } from 'react';
import { NumberGroup } from '../../../drawing/index.ts';
import { numberOfEdge, PageNumber, type NumberKey } from '../../../numbers/index.ts';
import { barPlaces } from '../paper/bar-places.ts';
import { meanZones, type MeanZone } from '../paper/mean-zones.ts';
import { limitText, short, type SheetFacts } from '../sheet-facts.ts';

const LENGTH_mm = 184;
const MARGIN_mm = 26;
const LABEL_mm = 15;

/** The first weights as a decision: net above, gross below, the action in each zone. */
export function DecisionBar({ facts }: { readonly facts: SheetFacts }): ReactNode {
  const { expected, card } = facts.details;
  const target_mg = facts.target.fill_mg;
  const zones = meanZones(expected);
  const edges = [...new Set([...zones.flatMap(({ to_mg }) => (to_mg === undefined ? [] : [to_mg])), target_mg])].sort(
    (a, b) => a - b,
  );
  const { at_mm, isToScale } = barPlaces(edges, { length_mm: LENGTH_mm, margin_mm: MARGIN_mm, label_mm: LABEL_mm });
  const at = (edge_mg: number | undefined, end_mm: number): number =>
    edge_mg === undefined ? end_mm : (at_mm[edges.indexOf(edge_mg)] ?? end_mm);
  const tare_mg = card?.tare.mean_mg ?? 0;
  const label = (edge_mg: number, plus_mg: number): string => {
    if (edge_mg === expected.meanLow_mg) return limitText(edge_mg + plus_mg, 'low');
    if (edge_mg === expected.meanHigh_mg) return limitText(edge_mg + plus_mg, 'high');
    return short(edge_mg + plus_mg);
  };
  return (
    <>
      <NumberGroup className="sheet-bar" label={SHEET_WORDS.barLabel}>
        <Labels
          name={SHEET_WORDS.net}
          texts={edges.map((edge) => label(edge, 0))}
          numbers={edges.map((edge_mg) => numberAt(facts, edge_mg, 'net'))}
          at_mm={at_mm}
          isStrong
        />
        <div className="sheet-bar-zones">
          {zones.map((zone) => (
            <Zone
              key={zone.from_mg ?? 'first'}
              facts={facts}
              zone={zone}
              from_mm={at(zone.from_mg, 0)}
              to_mm={at(zone.to_mg, LENGTH_mm)}
            />
          ))}
          <span className="sheet-bar-target" style={{ left: `${short(at(target_mg, 0))}mm` }} />
        </div>
        {card ? (
          <Labels
            name={SHEET_WORDS.gross}
            texts={edges.map((edge) => label(edge, tare_mg))}
            numbers={edges.map((edge_mg) => numberAt(facts, edge_mg, 'gross'))}
            at_mm={at_mm}
            isStrong={false}
          />
        ) : null}
      </NumberGroup>
      {isToScale ? null : <p className="quiet">{SHEET_WORDS.schematic}</p>}
    </>
  );
}

interface LabelsProps {
  readonly name: string;
  readonly texts: readonly string[];
  readonly numbers: readonly (NumberKey | undefined)[];
  readonly at_mm: readonly number[];
  readonly isStrong: boolean;
}

function Labels({ name, texts, numbers, at_mm, isStrong }: LabelsProps): ReactNode {
  return (
    <div className={isStrong ? 'sheet-bar-labels sheet-strong' : 'sheet-bar-labels'}>
      <span className="sheet-bar-name">{name}</span>
      {texts.map((text, i) => (
        <span key={text} className="sheet-bar-label" style={{ left: `${short(at_mm[i] ?? 0)}mm` }}>
          {numbers[i] === undefined ? text : <PageNumber number={numbers[i]}>{text}</PageNumber>}
        </span>
      ))}
    </div>
  );
}

/** What an edge of the bar is; the target is one of them. */
function numberAt({ details, target }: SheetFacts, edge_mg: number, kind: 'net' | 'gross'): NumberKey | undefined {
  if (edge_mg === target.fill_mg) return kind === 'net' ? 'target' : undefined;
  return numberOfEdge(details.expected, { edge_mg, kind, hasCard: details.card !== undefined });
}

interface ZoneProps {
  readonly facts: SheetFacts;
  readonly zone: MeanZone;
  readonly from_mm: number;
  readonly to_mm: number;
}

function Zone({ facts, zone, from_mm, to_mm }: ZoneProps): ReactNode {
  const style: CSSProperties = { left: `${short(from_mm)}mm`, width: `${short(to_mm - from_mm)}mm` };
  return (
    <span className={`sheet-zone sheet-zone-${zone.action}`} style={style}>
      {zoneWords(facts, zone)}
    </span>
  );
}

function zoneWords({ details }: SheetFacts, { action }: MeanZone): string {
  const { actions } = SHEET_WORDS;
  const { under, over } = details.expected;
  switch (action) {
    case 'stop':
      return actions.stop;
    case 'leave':
      return actions.leave;
    case 'more':
      return under ? actions.more(adjusterName(under.adjuster)) : actions.noAdjuster;
    case 'less':
      return over ? actions.less(adjusterName(over.adjuster)) : actions.noAdjuster;
  }
}

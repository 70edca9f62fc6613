import { memo, type ReactNode } from 'react';
import type { CandidateDetails } from '@fillwright/engine/design';
import { adjusterName, FILL_WORDS } from '@fillwright/words/en';
import { fixed, NumberGroup } from '../../drawing/index.ts';
import type { Decision } from './decision-zones.ts';
import { isSameAxis, type ForecastView } from './forecast-view.ts';
import { numberOfEdge, PageNumber } from '../../numbers/index.ts';
import type { WeightsAxis } from './weights-axis.ts';

type Expected = CandidateDetails['expected'];

/** What to do in a zone, in a few words. @returns for example `pin 1 deeper` */
function zoneText(decision: Decision, { under, over }: Expected): string {
  const { zones } = FILL_WORDS;
  if (decision === 'stop' || decision === 'leave-alone') return zones[decision];
  const correction = decision === 'deeper' ? under : over;
  return correction ? zones[decision](adjusterName(correction.adjuster)) : zones.noAdjuster;
}

/** For a zone too narrow for its words. */
const SIGNS: Readonly<Record<Decision, string>> = {
  stop: '\u00d7',
  deeper: '\u2193',
  'leave-alone': '=',
  higher: '\u2191',
};

interface StripProps {
  readonly view: ForecastView;
  readonly expected: Expected;
  readonly isPending: boolean;
}

/** A lever moves the heap over the strip; the strip itself follows with the new interval, or when the axis moves. */
function isSameStrip(one: StripProps, other: StripProps): boolean {
  return one.expected === other.expected && one.isPending === other.isPending && isSameAxis(one, other);
}

/** The decision under the same axis: net above, gross below. */
export const DecisionStrip = memo(function DecisionStrip(props: StripProps): ReactNode {
  const { view, expected, isPending } = props;
  const { axis, zones, tare_mg } = view;
  const share = (mass_mg: number): string => `${(100 * axis.at_frac(mass_mg)).toFixed(2)}%`;
  const cuts = zones.slice(1).map(({ from_mg }) => from_mg);
  return (
    <NumberGroup className="decision" label={FILL_WORDS.decisionNumbers}>
      <Figures {...{ view, cuts, isPending }} at={share} kind="net" />
      <div className="decision-zones" aria-hidden="true">
        {zones.map(({ decision, from_mg, to_mg }) => (
          <div
            key={from_mg}
            className={`decision-zone decision-${decision}`}
            style={{ width: `${(100 * (axis.at_frac(to_mg) - axis.at_frac(from_mg))).toFixed(2)}%` }}
          >
            <span className="decision-words">{zoneText(decision, expected)}</span>
            <span className="decision-sign">{SIGNS[decision]}</span>
          </div>
        ))}
      </div>
      {tare_mg === undefined ? null : <Figures {...{ view, cuts }} at={share} kind="gross" isPending />}
    </NumberGroup>
  );
}, isSameStrip);

/** Two figures closer than this would run into each other. */
const CLOSE_frac = 0.075;

/** A figure that has a close neighbour makes room on the other side. */
function sideOf(index: number, cuts: readonly number[], { at_frac }: WeightsAxis): string {
  const gap = (i: number): number => at_frac(cuts[i + 1] ?? Infinity) - at_frac(cuts[i] ?? -Infinity);
  if (gap(index) < CLOSE_frac) return 'decision-figure-left';
  return gap(index - 1) < CLOSE_frac ? 'decision-figure-right' : '';
}

function Figures(props: {
  readonly view: ForecastView;
  readonly cuts: readonly number[];
  readonly at: (mass_mg: number) => string;
  readonly kind: 'net' | 'gross';
  readonly isPending: boolean;
}): ReactNode {
  const { view, cuts, at, kind, isPending } = props;
  const add_mg = kind === 'net' ? 0 : (view.tare_mg ?? NaN);
  return (
    <div className={isPending ? 'decision-figures quiet' : 'decision-figures'}>
      <span className="decision-name">{FILL_WORDS[kind]}</span>
      {cuts.map((cut_mg, i) => {
        const text = fixed(cut_mg + add_mg, 0);
        const number = numberOfEdge(view, { edge_mg: cut_mg, kind, hasCard: view.tare_mg !== undefined });
        return (
          <span key={cut_mg} className={`decision-figure ${sideOf(i, cuts, view.axis)}`} style={{ left: at(cut_mg) }}>
            {number === undefined ? text : <PageNumber number={number}>{text}</PageNumber>}
          </span>
        );
      })}
    </div>
  );
}

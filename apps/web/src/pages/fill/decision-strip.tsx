import type { ReactNode } from 'react';
import type { CandidateDetails } from '@fillwright/engine/design';
import { adjusterName, FILL_WORDS } from '@fillwright/words/en';
import { fixed } from '../../drawing/index.ts';
import type { Decision } from './decision-zones.ts';
import type { ForecastView } from './forecast-view.ts';

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

/** The decision under the same axis: net above, gross below. */
export function DecisionStrip(props: {
  readonly view: ForecastView;
  readonly expected: Expected;
  readonly isPending: boolean;
}): ReactNode {
  const { view, expected, isPending } = props;
  const { axis, zones, tare_mg } = view;
  const share = (mass_mg: number): string => `${(100 * axis.at_frac(mass_mg)).toFixed(2)}%`;
  const cuts = zones.slice(1).map(({ from_mg }) => from_mg);
  return (
    <div className="decision" aria-hidden="true">
      <Figures cuts={cuts} at={share} add_mg={0} name={FILL_WORDS.net} isPending={isPending} />
      <div className="decision-zones">
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
      {tare_mg === undefined ? null : (
        <Figures cuts={cuts} at={share} add_mg={tare_mg} name={FILL_WORDS.gross} isPending />
      )}
    </div>
  );
}

function Figures(props: {
  readonly cuts: readonly number[];
  readonly at: (mass_mg: number) => string;
  readonly add_mg: number;
  readonly name: string;
  readonly isPending: boolean;
}): ReactNode {
  return (
    <div className={props.isPending ? 'decision-figures quiet' : 'decision-figures'}>
      <span className="decision-name">{props.name}</span>
      {props.cuts.map((cut_mg) => (
        <span key={cut_mg} className="decision-figure" style={{ left: props.at(cut_mg) }}>
          {fixed(cut_mg + props.add_mg, 0)}
        </span>
      ))}
    </div>
  );
}

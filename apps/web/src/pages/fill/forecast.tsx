import { memo, useMemo, type ReactNode } from 'react';
import type { Candidate, CandidateDetails, Correction, SearchInput } from '@fillwright/engine/design';
import { adjusterName, CONSEQUENCE_WORDS, FILL_WORDS } from '@fillwright/words/en';
import { fixed } from '../../drawing/index.ts';
import { DecisionStrip } from './decision-strip.tsx';
import { DecisionTable } from './decision-table.tsx';
import { standardHeap } from './first-weights.ts';
import { forecastView, isSameAxis, type ForecastView } from './forecast-view.ts';
import { bellPath, DOT, HEAP, heapPath } from './heap-path.ts';
import { limitNames } from './limit-names.ts';
import { numbersInSentence } from '../../numbers/index.ts';
import './forecast.css';

interface ForecastProps {
  readonly input: SearchInput;
  readonly candidate: Candidate;
  readonly details: CandidateDetails;
  readonly isPending: boolean;
}

/** The first weights as a decision: conclusion, one dot per capsule, and what to do with their mean. */
export const Forecast = memo(function Forecast({ input, candidate, details, isPending }: ForecastProps): ReactNode {
  const view = forecastView(input, { candidate, details });
  const heap = useMemo(() => standardHeap(input.seed), [input.seed]);
  const { low_mg, high_mg, tare_mg, firstCount } = view;
  return (
    <section className="forecast" aria-labelledby="forecast-title">
      <Conclusion {...{ low_mg, high_mg, tare_mg, firstCount, isPending }} />
      <div className="forecast-picture">
        <Heap view={view} heap={heap} />
        <Limits view={view} />
        <DecisionStrip view={view} expected={details.expected} isPending={isPending} />
      </div>
      <DecisionTable view={view} expected={details.expected} />
      <p className="quiet">{FILL_WORDS.readHere}</p>
      <Consequences expected={details.expected} />
    </section>
  );
});

type ConclusionProps = Pick<ForecastView, 'low_mg' | 'high_mg' | 'tare_mg' | 'firstCount'> &
  Pick<ForecastProps, 'isPending'>;

/** Between which masses the first capsules will lie; a lever that moves does not change it before it is let go. */
const Conclusion = memo(function Conclusion(props: ConclusionProps): ReactNode {
  const { low_mg, high_mg, tare_mg, firstCount, isPending } = props;
  const gross = (net_mg: number): string => fixed(net_mg + (tare_mg ?? NaN), 0);
  return (
    <>
      <h2 id="forecast-title" className={isPending ? 'forecast-title quiet' : 'forecast-title'}>
        {numbersInSentence((texts) => FILL_WORDS.forecast({ n: firstCount, ...texts }), {
          low: { text: fixed(low_mg, 0), number: 'first-net-low' },
          high: { text: fixed(high_mg, 0), number: 'first-net-high' },
        })}
      </h2>
      <p className="quiet">
        {FILL_WORDS.forecastAbout}{' '}
        {tare_mg === undefined
          ? null
          : numbersInSentence(FILL_WORDS.forecastGross, {
              low: { text: gross(low_mg), number: 'first-gross-low' },
              high: { text: gross(high_mg), number: 'first-gross-high' },
            })}
      </p>
    </>
  );
});

const OUTLINE = { height: 54 };

function Heap({ view, heap }: { readonly view: ForecastView; readonly heap: readonly number[] }): ReactNode {
  const { axis, mean_mg, unit_mg, meanLow_mg, meanHigh_mg, outlines_mg } = view;
  // As fine as is seen, so that a lever moves heap and outlines as a whole and draws none of them again.
  const sd = Number((unit_mg / (axis.to_mg - axis.from_mg)).toFixed(3));
  const dots = useMemo(() => heapPath(heap.map((z) => z * sd)), [heap, sd]);
  const bell = useMemo(() => bellPath({ sd, height: OUTLINE.height }), [sd]);
  const x = (mass_mg: number): number => axis.at_frac(mass_mg) * HEAP.width;
  const [left, right] = [x(meanLow_mg), x(meanHigh_mg)];
  return (
    <svg className="forecast-heap" viewBox={`0 0 ${HEAP.width} ${HEAP.height}`} role="img" aria-label={textOf(view)}>
      <rect className="forecast-mean" x={left} width={right - left} y={HEAP.top} height={HEAP.height - HEAP.top} />
      {outlines_mg.map((middle_mg, i) => (
        <path key={i} className="forecast-outline" d={bell} transform={`translate(${x(middle_mg).toFixed(1)} 0)`} />
      ))}
      <path
        className="forecast-dots"
        strokeWidth={DOT * 0.88}
        d={dots}
        transform={`translate(${x(mean_mg).toFixed(1)} 0)`}
      />
      {[view.singleLow_mg, view.singleHigh_mg].map((limit_mg) => (
        <path key={limit_mg} className="forecast-single" d={`M${x(limit_mg)} 2V${HEAP.height}`} />
      ))}
      <path className="forecast-axis" d={`M0 ${HEAP.height}H${HEAP.width}`} />
    </svg>
  );
}

function textOf(view: ForecastView): string {
  const shown = (mass_mg: number): string => fixed(mass_mg, 0);
  const limits = FILL_WORDS.forecastLimits({
    ...{ low: shown(view.singleLow_mg), high: shown(view.singleHigh_mg) },
    ...{ meanLow: shown(view.meanLow_mg), meanHigh: shown(view.meanHigh_mg) },
  });
  return FILL_WORDS.forecastText({
    ...{ mean: shown(view.mean_mg), low: shown(view.low_mg), high: shown(view.high_mg), limits },
  });
}

/** Names of the limits over the picture. */
const Limits = memo(function Limits({ view }: { readonly view: ForecastView }): ReactNode {
  const { singleLow_mg, singleHigh_mg, tare_mg, axis } = view;
  const { isLowInside, isHighInside, mean_frac } = limitNames(view);
  const left = (at_frac: number): string => `${(100 * at_frac).toFixed(2)}%`;
  const inside = (isInside: boolean): string => (isInside ? 'forecast-limit-inside' : '');
  // Without a card, for want of a tare, the limits have no entry.
  const areKnown = tare_mg !== undefined;
  return (
    <div className="forecast-limits">
      <span className={`forecast-limit-low ${inside(isLowInside)}`} style={{ left: left(axis.at_frac(singleLow_mg)) }}>
        {numbersInSentence(({ value }) => FILL_WORDS.singleLow(value), {
          value: { text: fixed(singleLow_mg, 0), number: areKnown ? 'limit-action-low' : undefined },
        })}
      </span>
      <span className="forecast-limit-mean" style={{ left: left(mean_frac) }}>
        {FILL_WORDS.meanLimits}
      </span>
      <span
        className={`forecast-limit-high ${inside(isHighInside)}`}
        style={{ left: left(axis.at_frac(singleHigh_mg)) }}
      >
        {numbersInSentence(({ value }) => FILL_WORDS.singleHigh(value), {
          value: { text: fixed(singleHigh_mg, 0), number: areKnown ? 'limit-action-high' : undefined },
        })}
      </span>
    </div>
  );
}, isSameAxis);

/** What turning as far as the sheet's example would bring. */
const Consequences = memo(function Consequences({ expected }: Pick<CandidateDetails, 'expected'>): ReactNode {
  const { under, over } = expected;
  const sentences = [...consequencesOf(under, 'deeper'), ...consequencesOf(over, 'higher')];
  return sentences.map((sentence) => (
    <p key={sentence} className="quiet">
      {sentence}
    </p>
  ));
});

function consequencesOf(correction: Correction | undefined, side: 'deeper' | 'higher'): readonly string[] {
  if (!correction) return [];
  const { adjuster, exampleStepCount, brings, isOutsideValidated } = correction;
  const move = FILL_WORDS.correction({ side, adjuster: adjusterName(adjuster), steps: exampleStepCount });
  const consequences = brings.map((code) => CONSEQUENCE_WORDS[code] ?? code).join(', ');
  return [
    ...(consequences === '' ? [] : [FILL_WORDS.brings(move, consequences)]),
    ...(isOutsideValidated ? [FILL_WORDS.leavesValidated(move)] : []),
  ];
}

import type { CandidateDetails, SearchInput } from '@fillwright/engine/design';
import type { Candidate } from '@fillwright/engine/design';
import { decisionZones, type DecisionZone } from './decision-zones.ts';
import { weightsAxis, type WeightsAxis } from './weights-axis.ts';

/** The first weights as a picture: heap, how far it may be off, limits, and what to do at each mean. All masses net. */
export interface ForecastView {
  readonly mean_mg: number;
  readonly unit_mg: number;
  readonly low_mg: number;
  readonly high_mg: number;
  /** Middle of the outlines: the ends of the forecast, moved along with a lever until it is computed again. */
  readonly outlines_mg: readonly [number, number];
  readonly meanLow_mg: number;
  readonly meanHigh_mg: number;
  readonly singleLow_mg: number;
  readonly singleHigh_mg: number;
  readonly tare_mg: number | undefined;
  readonly firstCount: number;
  readonly axis: WeightsAxis;
  readonly zones: readonly DecisionZone[];
}

/** Whether two pictures of the same forecast differ in no more than where the heap lies. */
export function isSameAxis(one: { readonly view: ForecastView }, other: { readonly view: ForecastView }): boolean {
  const [a, b] = [one.view, other.view];
  return (
    a.axis.from_mg === b.axis.from_mg &&
    a.axis.to_mg === b.axis.to_mg &&
    a.zones.length === b.zones.length &&
    a.zones.every(({ from_mg, decision }, i) => b.zones[i]?.from_mg === from_mg && b.zones[i].decision === decision) &&
    a.singleLow_mg === b.singleLow_mg &&
    a.meanLow_mg === b.meanLow_mg &&
    a.meanHigh_mg === b.meanHigh_mg &&
    a.tare_mg === b.tare_mg
  );
}

/** Weights of a first sample, at least. */
const FIRST_COUNT = 100;

/**
 * The forecast of a set-up. While its details are being computed those of the old setting are moved along with the mean.
 *
 * @param input - limits of the dossier
 * @param at - the set-up and its details
 * @returns the picture
 */
export function forecastView(
  { brief }: SearchInput,
  at: { readonly candidate: Candidate; readonly details: CandidateDetails },
): ForecastView {
  const { prediction } = at.candidate;
  const { expected, interval, card } = at.details;
  const { low_mg, high_mg, meanLow_mg, meanHigh_mg } = expected;
  const target_mg = (meanLow_mg + meanHigh_mg) / 2;
  const single_mg = (target_mg * brief.inProcess.individualAction_pct) / 100;
  const shift_mg = prediction.mass_mg - interval.mean_mg;
  const seen = {
    mean_mg: prediction.mass_mg,
    unit_mg: (prediction.mass_mg * prediction.spread.unit_pct) / 100,
    ...{ low_mg, high_mg, singleLow_mg: target_mg - single_mg, singleHigh_mg: target_mg + single_mg },
  };
  const axis = weightsAxis(seen);
  const { from_mg, to_mg } = axis;
  return {
    ...seen,
    ...{ meanLow_mg, meanHigh_mg, axis, tare_mg: card?.tare.mean_mg },
    firstCount: Math.max(FIRST_COUNT, brief.inProcess.sampleCount ?? 0),
    outlines_mg: [low_mg + shift_mg, high_mg + shift_mg],
    zones: decisionZones({ low_mg, high_mg, meanLow_mg, meanHigh_mg, from_mg, to_mg }),
  };
}

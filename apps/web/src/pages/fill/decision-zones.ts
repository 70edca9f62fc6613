/** What to do when the mean of the first weights lies in a zone. */
export type Decision = 'stop' | 'deeper' | 'leave-alone' | 'higher';

export interface DecisionZone {
  readonly decision: Decision;
  readonly from_mg: number;
  readonly to_mg: number;
}

/** Forecast and mean limits, mg net, and the ends of the axis. */
export interface DecisionEdges {
  readonly low_mg: number;
  readonly high_mg: number;
  readonly meanLow_mg: number;
  readonly meanHigh_mg: number;
  readonly from_mg: number;
  readonly to_mg: number;
}

/**
 * The strip of decisions under the axis: outside the forecast stop, the model is wrong, even where the mean would please;
 * inside it turn towards the mean limits, and between them leave the machine alone.
 *
 * @param edges - of forecast, limits and axis
 * @returns zones from the lowest mass to the highest, none of them empty
 */
export function decisionZones(edges: DecisionEdges): readonly DecisionZone[] {
  const { low_mg, high_mg, meanLow_mg, meanHigh_mg, from_mg, to_mg } = edges;
  const cuts = [low_mg, high_mg, meanLow_mg, meanHigh_mg].filter((cut) => cut > from_mg && cut < to_mg);
  const ends = [...new Set([from_mg, ...cuts, to_mg])].sort((a, b) => a - b);
  const zones: DecisionZone[] = [];
  ends.slice(1).forEach((end_mg, i) => {
    const start_mg = ends[i] ?? from_mg;
    const decision = decisionAt((start_mg + end_mg) / 2, edges);
    const last = zones.at(-1);
    if (last?.decision === decision) zones[zones.length - 1] = { ...last, to_mg: end_mg };
    else zones.push({ decision, from_mg: start_mg, to_mg: end_mg });
  });
  return zones;
}

function decisionAt(mass_mg: number, { low_mg, high_mg, meanLow_mg, meanHigh_mg }: DecisionEdges): Decision {
  if (!(mass_mg >= low_mg && mass_mg <= high_mg)) return 'stop';
  if (mass_mg < meanLow_mg) return 'deeper';
  return mass_mg > meanHigh_mg ? 'higher' : 'leave-alone';
}

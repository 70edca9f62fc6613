/** What the mean of the first weights asks for. */
type Action = 'stop' | 'more' | 'leave' | 'less';

export interface MeanZone {
  readonly action: Action;
  /** Ends, mg net; the outermost zones have none. */
  readonly from_mg?: number;
  readonly to_mg?: number;
}

/** Forecast and mean limits, mg net. */
export interface MeanEdges {
  readonly low_mg: number;
  readonly high_mg: number;
  readonly meanLow_mg: number;
  readonly meanHigh_mg: number;
}

/**
 * The first weights as a decision: outside the forecast stop, inside it turn towards the mean limits, between them leave
 * the machine alone.
 *
 * @param edges - forecast and limits
 * @returns zones from the lowest mass to the highest
 */
export function meanZones(edges: MeanEdges): readonly MeanZone[] {
  const { low_mg, high_mg, meanLow_mg, meanHigh_mg } = edges;
  const cuts = [...new Set([low_mg, high_mg, meanLow_mg, meanHigh_mg])].sort((a, b) => a - b);
  const zones: MeanZone[] = [];
  for (let i = 0; i <= cuts.length; i++) {
    const [from_mg, to_mg] = [cuts[i - 1], cuts[i]];
    const middle_mg = from_mg === undefined ? -Infinity : to_mg === undefined ? Infinity : (from_mg + to_mg) / 2;
    const zone = { action: actionAt(middle_mg, edges), ...ends(from_mg, to_mg) };
    const last = zones.at(-1);
    if (last?.action === zone.action) zones[zones.length - 1] = { action: zone.action, ...ends(last.from_mg, to_mg) };
    else zones.push(zone);
  }
  return zones;
}

function ends(from_mg: number | undefined, to_mg: number | undefined): Omit<MeanZone, 'action'> {
  return { ...(from_mg === undefined ? {} : { from_mg }), ...(to_mg === undefined ? {} : { to_mg }) };
}

/** A mass that is no number is outside. */
function actionAt(mass_mg: number, { low_mg, high_mg, meanLow_mg, meanHigh_mg }: MeanEdges): Action {
  if (!(mass_mg > low_mg && mass_mg < high_mg)) return 'stop';
  if (mass_mg < meanLow_mg) return 'more';
  return mass_mg > meanHigh_mg ? 'less' : 'leave';
}

import type { LimitCard } from '#design';
import type { Histogram } from './weights-judgement.ts';

/** Bars wanted over the weights and the single limits. */
const WANTED_BARS = 24;
const MOST_BARS = 200;
/** No balance for capsules reads finer. */
const NARROWEST_mg = 0.001;
const STEPS = [1, 2, 5] as const;

/**
 * Bars of equal width over all weights. Where there are single limits their width divides the way from limit to limit, so that
 * an edge falls on each of the two.
 *
 * @param net_mg - masses, at least 1
 * @param card - the limits; left out: bars of a round width
 * @returns counts from the lowest bar on; a mass on an edge belongs to the bar above, one on the upper limit to the bar below
 * @throws nothing
 * @source this project's choice
 */
export function histogram(net_mg: readonly number[], card: LimitCard | undefined): Histogram {
  const lowest_mg = net_mg.reduce((low, mass_mg) => Math.min(low, mass_mg), Infinity);
  const highest_mg = net_mg.reduce((high, mass_mg) => Math.max(high, mass_mg), -Infinity);
  const edges = card ? [card.individualAction.netLow_mg, card.individualAction.netHigh_mg] : [];
  const reach_mg = Math.max(highest_mg, ...edges) - Math.min(lowest_mg, ...edges);
  const width_mg = card
    ? widthBetween(card, reach_mg)
    : roundWidth(reach_mg > 0 ? Math.max(reach_mg / WANTED_BARS, NARROWEST_mg) : 0);
  const origin_mg = card ? card.individualAction.netLow_mg : Math.floor(lowest_mg / width_mg) * width_mg;
  const last_mg = card?.individualAction.netHigh_mg ?? Infinity;
  const place = (mass_mg: number): number =>
    mass_mg === last_mg
      ? Math.round((last_mg - origin_mg) / width_mg) - 1
      : Math.floor((mass_mg - origin_mg) / width_mg);
  const places = net_mg.map(place);
  const first = Math.min(0, place(lowest_mg));
  const top = Math.max(card ? Math.round((last_mg - origin_mg) / width_mg) - 1 : 0, place(highest_mg));
  const counts = new Array<number>(top - first + 1).fill(0);
  for (const at of places) counts[at - first]! += 1;
  return { low_mg: origin_mg + first * width_mg, width_mg, counts, limits: card ? limitsOf(card) : [] };
}

/** The way from limit to limit in whole bars; fewer of them when a stray weight makes the axis long. */
function widthBetween({ individualAction }: LimitCard, reach_mg: number): number {
  const between_mg = individualAction.netHigh_mg - individualAction.netLow_mg;
  const wanted = Math.round((WANTED_BARS * between_mg) / reach_mg);
  const bars = Math.max(6, Math.min(WANTED_BARS, wanted));
  const width_mg = between_mg / bars;
  return reach_mg / width_mg > MOST_BARS ? reach_mg / MOST_BARS : width_mg;
}

function roundWidth(width_mg: number): number {
  if (!(width_mg > 0)) return 1;
  let decade = 1;
  while (decade > width_mg) decade /= 10;
  while (decade * 10 <= width_mg) decade *= 10;
  const step = STEPS.find((each) => each * decade >= width_mg) ?? 10;
  return step * decade;
}

function limitsOf({ meanAction, individualAlert, individualAction }: LimitCard): Histogram['limits'] {
  return [
    { kind: 'action-low', net_mg: individualAction.netLow_mg },
    { kind: 'alert-low', net_mg: individualAlert.netLow_mg },
    { kind: 'mean-low', net_mg: meanAction.netLow_mg },
    { kind: 'mean-high', net_mg: meanAction.netHigh_mg },
    { kind: 'alert-high', net_mg: individualAlert.netHigh_mg },
    { kind: 'action-high', net_mg: individualAction.netHigh_mg },
  ];
}

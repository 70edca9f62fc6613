import type { LimitCard, LimitPair } from '@fillwright/engine/design';

/** A mark on the axis of the card. */
export interface LimitMark {
  readonly kind: 'single-action' | 'single-alert' | 'mean-action' | 'target';
  readonly side: 'low' | 'high' | 'middle';
  readonly net_mg: number;
  readonly gross_mg: number;
}

/**
 * Every limit of a card, the heaviest first, as they stand on its axis.
 *
 * @param card - the limits
 * @returns seven marks
 */
export function limitMarks(card: LimitCard): readonly LimitMark[] {
  const pair = (kind: LimitMark['kind'], of: LimitPair): readonly LimitMark[] => [
    { kind, side: 'low', net_mg: of.netLow_mg, gross_mg: of.grossLow_mg },
    { kind, side: 'high', net_mg: of.netHigh_mg, gross_mg: of.grossHigh_mg },
  ];
  const marks: LimitMark[] = [
    ...pair('single-action', card.individualAction),
    ...pair('single-alert', card.individualAlert),
    ...pair('mean-action', card.meanAction),
    { kind: 'target', side: 'middle', net_mg: card.target_mg, gross_mg: card.grossTarget_mg },
  ];
  return marks.sort((a, b) => b.net_mg - a.net_mg);
}

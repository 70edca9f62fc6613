import type { LimitPair, RankedCandidate } from '@fillwright/engine/design';
import { DESIGN_WORDS } from '@fillwright/words/en';
import { columns } from '../layout.ts';
import { fixed } from './shown.ts';

/**
 * What the floor weighs against.
 *
 * @param of - the card, of a set-up or of weights
 * @returns the lines; one sentence when no tare is known
 */
export function limitCardText({ card }: Pick<RankedCandidate, 'card'>): string {
  if (!card) return `${DESIGN_WORDS.card}\n  ${DESIGN_WORDS.noTare}`;
  const { cardRows } = DESIGN_WORDS;
  const range = (low_mg: number, high_mg: number): string => `${fixed(low_mg)} to ${fixed(high_mg)}`;
  const row = (name: string, pair: LimitPair): readonly string[] => [
    name,
    range(pair.netLow_mg, pair.netHigh_mg),
    range(pair.grossLow_mg, pair.grossHigh_mg),
  ];
  const { tare } = card;
  const tared =
    tare.standardError_mg === undefined
      ? DESIGN_WORDS.tareGuess(fixed(tare.mean_mg))
      : DESIGN_WORDS.tare({
          ...{ mean: fixed(tare.mean_mg), se: fixed(tare.standardError_mg, 2) },
          ...{ n: tare.shellCount, lot: tare.lot },
        });
  return [
    DESIGN_WORDS.card,
    columns(
      [
        DESIGN_WORDS.cardColumns,
        [cardRows.target, fixed(card.target_mg), fixed(card.grossTarget_mg)],
        row(cardRows.mean(card.sampleCount), card.meanAction),
        row(cardRows.alert, card.individualAlert),
        row(cardRows.action, card.individualAction),
      ],
      '  ',
    ),
    `  ${tared}`,
    `  ${DESIGN_WORDS.blur(fixed(card.shellBlur_mg))}`,
    ...(card.isAlertAssumed ? [`  ${DESIGN_WORDS.alertAssumed}`] : []),
    ...(card.isSampleCountAssumed ? [`  ${DESIGN_WORDS.countAssumed}`] : []),
  ].join('\n');
}

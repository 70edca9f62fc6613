import type { LimitCard } from '@fillwright/engine/design';
import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import type { NumberReference } from '../../../numbers/index.ts';

/** Which number of a limit card. */
export interface LimitSide {
  readonly of: 'mean' | 'alert' | 'action';
  readonly kind: 'net' | 'gross';
  readonly end: 'low' | 'high';
}

/**
 * How a limit of the card was made, before it is rounded inwards.
 *
 * @param card - the limits and the tare
 * @param side - which of them
 * @returns the reference; without an entry where the tare is a guess
 */
export function limitNumber(card: LimitCard, { of, kind, end }: LimitSide): NumberReference {
  const { target_mg, tare } = card;
  const pair = { mean: card.meanAction, alert: card.individualAlert, action: card.individualAction }[of];
  const output = `${kind}${end === 'low' ? 'Low' : 'High'}_mg` as const;
  const { titles, remarks, origins } = OPEN_NUMBER_WORDS;
  const isGuess = kind === 'gross' && tare.shellCount === 0;
  return {
    entry: isGuess ? '' : 'design.limits',
    inputs: {
      ...{ target_mg, limit_pct: (100 * (pair.netHigh_mg - target_mg)) / target_mg },
      ...{ tareMean_mg: tare.mean_mg, tareSd_mg: tare.sd_mg, shellCount: Math.max(1, tare.shellCount) },
    },
    ...{ output, unit: 'mg', title: titles.limits[of]({ kind, end }), value: pair[output] },
    ...(isGuess ? { remark: remarks.tareGuess } : {}),
    origins: { target_mg: { words: origins.dossier }, limit_pct: { words: origins.dossier } },
  };
}

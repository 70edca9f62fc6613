import type { LimitCard, LimitPair } from '@fillwright/engine/design';
import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import type { InputOrigin, NumberKey, NumberReference } from '../number-reference.ts';
import type { PageFacts } from './page-facts.ts';

type Named = readonly [NumberKey, NumberReference];
type LimitName = keyof (typeof OPEN_NUMBER_WORDS)['titles']['limits'];

/**
 * Limits of the card. The catalogue asks for weighed shells: a tare that is a guess has no reference.
 *
 * @param facts - candidate with its details
 * @returns references by key
 */
export function limitReferences({ details, input }: PageFacts): readonly Named[] {
  const card = details?.card;
  if (!card) return [];
  const { meanAction_pct, individualAction_pct } = input.brief.inProcess;
  const mean = common(card, meanAction_pct);
  const action = common(card, individualAction_pct);
  const { titles } = OPEN_NUMBER_WORDS;
  return [
    ...pair(mean, 'mean', card.meanAction),
    ...pair(common(card, alert_pct(card)), 'alert', card.individualAlert),
    ...pair(action, 'action', card.individualAction),
    ...(card.tare.standardError_mg === undefined
      ? []
      : [
          [
            'tare-error',
            { ...action, output: 'tareStandardError_mg', title: titles.tareError, value: card.tare.standardError_mg },
          ] as const,
        ]),
    ['shell-blur', { ...action, output: 'shellBlur_mg', title: titles.shellBlur, value: card.shellBlur_mg }],
  ];
}

/** As the card has it, so that an assumed alert limit needs no rule here. */
function alert_pct({ individualAlert, target_mg }: LimitCard): number {
  return (100 * (individualAlert.netHigh_mg - target_mg)) / target_mg;
}

function common(card: LimitCard, limit_pct: number): Pick<NumberReference, 'entry' | 'inputs' | 'origins'> {
  const { target_mg, tare } = card;
  const { origins } = OPEN_NUMBER_WORDS;
  const shells: InputOrigin = { words: origins.shellLot(tare.lot) };
  return {
    entry: tare.shellCount > 0 ? 'design.limits' : '',
    inputs: { target_mg, limit_pct, tareMean_mg: tare.mean_mg, tareSd_mg: tare.sd_mg, shellCount: tare.shellCount },
    origins: {
      target_mg: { number: 'target' },
      limit_pct: { words: origins.dossier },
      ...{ tareMean_mg: shells, tareSd_mg: shells, shellCount: shells },
    },
  };
}

function pair(
  given: Pick<NumberReference, 'entry' | 'inputs' | 'origins'>,
  name: LimitName,
  { netLow_mg, netHigh_mg, grossLow_mg, grossHigh_mg }: LimitPair,
): readonly Named[] {
  const { titles, remarks } = OPEN_NUMBER_WORDS;
  const unknown = given.entry === '' ? { remark: remarks.tareGuess } : {};
  const side = (kind: 'net' | 'gross', end: 'low' | 'high', value: number): Named => [
    `${kind === 'net' ? 'limit' : 'gross'}-${name}-${end}`,
    {
      ...{ ...given, ...unknown, unit: 'mg', value },
      ...{ output: `${kind}${end === 'low' ? 'Low' : 'High'}_mg`, title: titles.limits[name]({ kind, end }) },
    },
  ];
  return [
    side('net', 'low', netLow_mg),
    side('net', 'high', netHigh_mg),
    side('gross', 'low', grossLow_mg),
    side('gross', 'high', grossHigh_mg),
  ];
}

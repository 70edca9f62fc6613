import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import { halfWidth_mg, narrowings } from '../narrowings.ts';
import type { InputOrigin, NumberKey, NumberReference } from '../number-reference.ts';
import type { PageFacts } from './page-facts.ts';

type Named = readonly [NumberKey, NumberReference];

/**
 * The first weights as they are announced, and what would make them surer.
 *
 * @param facts - candidate with its details
 * @returns references by key; none while the details are computed
 */
export function forecastReferences(facts: PageFacts): readonly Named[] {
  return [...firstWeights(facts), ...widths(facts)];
}

function firstWeights({ details, target }: PageFacts): readonly Named[] {
  if (!details) return [];
  const { interval, expected, card } = details;
  const tareMean_mg = card?.tare.mean_mg;
  const { origins, titles } = OPEN_NUMBER_WORDS;
  const ofMean: InputOrigin = { number: 'mean', words: origins.draws(98) };
  const common = {
    entry: 'design.first-weights',
    inputs: {
      ...{ low98_mg: interval.low98_mg, high98_mg: interval.high98_mg, target_mg: target.fill_mg },
      ...(tareMean_mg === undefined ? {} : { tareMean_mg }),
    },
    origins: {
      ...{ low98_mg: ofMean, high98_mg: ofMean, target_mg: { number: 'target' as const } },
      tareMean_mg: { words: origins.shellLot(card?.tare.lot) },
    },
  };
  const ends = (kind: 'net' | 'gross'): readonly Named[] =>
    (['low', 'high'] as const).map((end): Named => {
      const net_mg = end === 'low' ? expected.low_mg : expected.high_mg;
      const side = end === 'low' ? 'Low_mg' : 'High_mg';
      return [
        `first-${kind}-${end}`,
        {
          ...{ ...common, output: kind === 'net' ? `${end}_mg` : `gross${side}` },
          title: titles.first({ kind, end }),
          value: kind === 'net' ? net_mg : net_mg + (tareMean_mg ?? NaN),
        },
      ];
    });
  return [...ends('net'), ...(tareMean_mg === undefined ? [] : ends('gross'))];
}

function widths({ details }: PageFacts): readonly Named[] {
  if (!details) return [];
  const { interval } = details;
  const { low90_mg, high90_mg } = interval;
  const half_mg = halfWidth_mg(interval);
  const { origins, titles } = OPEN_NUMBER_WORDS;
  const ofMean: InputOrigin = { number: 'mean', words: origins.draws(90) };
  return [
    [
      'half-width',
      {
        entry: 'design.half-width',
        inputs: { low90_mg, high90_mg },
        origins: { low90_mg: ofMean, high90_mg: ofMean },
        ...{ output: 'half_mg', title: titles.halfWidth, value: half_mg },
      },
    ],
    ...narrowings(interval).map(({ by, half_mg: narrowed_mg, share_frac }): Named => [
      `narrowed:${by}`,
      {
        entry: 'design.narrowed-width',
        inputs: { half_mg, share_frac },
        origins: { half_mg: { number: 'half-width' }, share_frac: { number: 'mean', words: origins.shares } },
        ...{ output: 'narrowed_mg', title: titles.narrowed(OPEN_NUMBER_WORDS.halvedBy(by)), value: narrowed_mg },
      },
    ]),
  ];
}

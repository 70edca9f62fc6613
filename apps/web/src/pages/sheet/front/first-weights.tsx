import type { Correction } from '@fillwright/engine/design';
import { adjusterName, CONSEQUENCE_WORDS, DESIGN_WORDS, SHEET_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { scaleText } from '../../../drawing/index.ts';
import { numbersInSentence } from '../../../numbers/index.ts';
import { Blank } from '../page-parts.tsx';
import { firstCount, fixed, limitText, short, type SheetFacts } from '../sheet-facts.ts';
import { DecisionBar } from './decision-bar.tsx';
import { validatedText } from './pins-table.tsx';

/** What the first weights should be, and what to do about it. */
export function FirstWeights({ facts }: { readonly facts: SheetFacts }): ReactNode {
  const { expected, card } = facts.details;
  const words = SHEET_WORDS;
  const range = {
    low: { text: fixed(expected.low_mg, 0), number: 'first-net-low' },
    high: { text: fixed(expected.high_mg, 0), number: 'first-net-high' },
  } as const;
  return (
    <section>
      <h3>
        <span className="sheet-number">3</span>{' '}
        {numbersInSentence((texts) => words.firstTitle({ count: firstCount(facts), ...texts }), range)}
        <span className="sheet-beside">{words.firstNote}</span>
      </h3>
      <DecisionBar facts={facts} />
      <Turns facts={facts} />
      <p>
        <strong>{numbersInSentence(words.stopTitle, range)}</strong> {words.stopWhat}
      </p>
      <p>{words.discard(firstCount(facts))}</p>
      <p className="sheet-fill-in">
        {words.meanGross} <Blank width_mm={22} /> {card ? words.minusTare(fixed(card.tare.mean_mg)) : ''}{' '}
        <Blank width_mm={22} /> {words.isNet} <span className="sheet-gap" /> {words.balance} <Blank width_mm={18} />{' '}
        {words.time} <Blank width_mm={18} /> {words.by} <Blank width_mm={18} />
      </p>
    </section>
  );
}

function Turns({ facts }: { readonly facts: SheetFacts }): ReactNode {
  // Without a card, for want of a tare, the limits have no entry.
  const { expected, card } = facts.details;
  const { under, over, meanLow_mg, meanHigh_mg } = expected;
  if (!under && !over) return <p>{DESIGN_WORDS.noneOnStop}</p>;
  return (
    <div className="sheet-columns">
      {under ? (
        <p>
          <strong>
            {numbersInSentence(SHEET_WORDS.turnUnder, {
              low: { text: limitText(meanLow_mg, 'low'), number: card && 'limit-mean-low' },
            })}
          </strong>{' '}
          {turned(facts, under, 'deeper')}
        </p>
      ) : null}
      {over ? (
        <p>
          <strong>
            {numbersInSentence(SHEET_WORDS.turnOver, {
              high: { text: limitText(meanHigh_mg, 'high'), number: card && 'limit-mean-high' },
            })}
          </strong>{' '}
          {turned(facts, over, 'higher')}
        </p>
      ) : null}
    </div>
  );
}

/** One correction in words: how much a step does, an example in the numbers of the scale, what it would bring. */
function turned(facts: SheetFacts, correction: Correction, way: 'deeper' | 'higher'): ReactNode {
  const { adjuster, change_mg_per_step, step_mm, example_mg, exampleStepCount, brings, isOutsideValidated } =
    correction;
  const line = facts.details.sheet.find((one) => one.adjuster === adjuster);
  const scale = facts.place.context.filler.pins.scales.find(({ station }) => station === line?.station);
  if (!line || !scale) return '';
  const { station, reading_division = NaN, step_division = NaN } = line;
  const steps =
    (way === 'deeper' ? 1 : -1) * scale.deeperIs * exampleStepCount * (step_mm / scale.pitch_mm_per_division);
  const words = SHEET_WORDS;
  const first = numbersInSentence(
    (texts) => words.turn({ adjuster: adjusterName(adjuster), way, step: short(step_division), ...texts }),
    {
      change: { text: fixed(change_mg_per_step, 2), number: station === undefined ? undefined : `gain:${station}` },
      target: { text: short(facts.target.fill_mg), number: 'target' },
    },
  );
  const rest = [
    words.example({
      ...{ example: short(example_mg), side: way === 'deeper' ? 'short' : 'over', steps: exampleStepCount },
      ...{
        from: scaleText(reading_division, step_division),
        to: scaleText(reading_division + steps, step_division),
      },
    }),
    words.stay(rangeOf(validatedText(facts, line))),
    ...(brings.length > 0
      ? [DESIGN_WORDS.brings(brings.map((code) => CONSEQUENCE_WORDS[code] ?? code).join(', '))]
      : []),
    ...(isOutsideValidated ? [DESIGN_WORDS.leavesValidated] : []),
    words.againAfter,
  ].join(' ');
  return (
    <>
      {first} {rest}
    </>
  );
}

function rangeOf(text: string): { low: string; high: string } {
  const [low = '', high = ''] = text.split('–');
  return { low, high };
}

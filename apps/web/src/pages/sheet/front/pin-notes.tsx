import type { SheetFacts } from '../sheet-facts.ts';
import { SHEET_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { numbersInSentence } from '../../../numbers/index.ts';
import { Blank, Box } from '../page-parts.tsx';
import { signed } from '../sheet-facts.ts';

/** Smaller differences are not worth a line. */
const LEAST_mg = 0.05;

/** How the scales run, and what another disc would do. */
export function PinNotes({ facts }: { readonly facts: SheetFacts }): ReactNode {
  const words = SHEET_WORDS;
  const warned = facts.details.gains.parts.filter(
    ({ change_mg, changeAllKept_mg }) => Math.abs(changeAllKept_mg - change_mg) > LEAST_mg,
  );
  return (
    <>
      <p>
        {directionWords(facts)} {words.sameSide} {words.twoTurns} <Box /> {words.bedLevel} <Blank width_mm={14} />
      </p>
      {warned.length === 0 ? null : (
        <p className="quiet">
          {numbersInSentence(
            (changes) =>
              words.otherDisc(
                warned.map(({ to, changeAllKept_mg }) =>
                  words.keptReadings({ part: to, change: changes[to] ?? '', kept: mg(changeAllKept_mg) }),
                ),
              ),
            Object.fromEntries(
              warned.map(({ slot, to, change_mg }) => [
                to,
                { text: mg(change_mg), number: `part:${slot}:${to}` as const },
              ]),
            ),
          )}
        </p>
      )}
    </>
  );
}

const mg = (change_mg: number): string => `${signed(change_mg, 0)}\u202Fmg`;

function directionWords({ place }: SheetFacts): string {
  const ways = new Set(place.context.filler.pins.scales.map(({ deeperIs }) => deeperIs));
  if (ways.size > 1) return SHEET_WORDS.deeperMixed;
  return ways.has(1) ? SHEET_WORDS.deeperUp : SHEET_WORDS.deeperDown;
}

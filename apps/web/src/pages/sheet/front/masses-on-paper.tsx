import { SHEET_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { NumberGroup } from '../../../drawing/index.ts';
import { PageNumber } from '../../../numbers/index.ts';
import type { DiscPlaces } from '../paper/disc-places.ts';
import { fixed, short, type SheetFacts } from '../sheet-facts.ts';

interface MassesProps {
  readonly facts: SheetFacts;
  readonly places: DiscPlaces;
  readonly scale: number;
  /** Base plate below the top of the paper drawing. */
  readonly base_mm: number;
}

/** From the base plate to the middle of the masses. */
const MASS_mm = 5.2;

/** Under every bore what it holds when its station is left. Lengths in mm of paper. */
export function MassesOnPaper({ facts, places, scale, base_mm }: MassesProps): ReactNode {
  const { bore_mm, stations } = facts.candidate.prediction;
  return (
    <NumberGroup className="sheet-masses" label={SHEET_WORDS.massesBelow}>
      {stations.map(({ station, mass_mg }, i) => (
        <span
          key={station}
          className="sheet-mass"
          style={{
            left: `${short(scale * ((places.lefts_mm[i] ?? 0) + bore_mm / 2))}mm`,
            top: `${short(base_mm + MASS_mm)}mm`,
          }}
        >
          <PageNumber number={`mass:${station}`}>{fixed(mass_mg, 0)}</PageNumber>
        </span>
      ))}
      <p className="sheet-masses-name">{SHEET_WORDS.massesBelow}</p>
    </NumberGroup>
  );
}

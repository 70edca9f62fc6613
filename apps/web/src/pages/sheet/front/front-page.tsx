import { DOSING_METHOD_NAMES, findingSentence, SHEET_WORDS } from '@fillwright/words/en';
import { quantityForReading } from '@fillwright/words/numbers';
import { useRef, type ReactNode } from 'react';
import { numbersInSentence } from '../../../numbers/index.ts';
import type { PageIdentity } from '../page-identity.ts';
import { footOf, SheetSide } from '../page-parts.tsx';
import type { SheetFacts } from '../sheet-facts.ts';
import { FirstWeights } from './first-weights.tsx';
import { PaperDrawing } from './paper-drawing.tsx';
import { PartsTable } from './parts-table.tsx';
import { PinNotes } from './pin-notes.tsx';
import { useStepsToFit } from './use-steps-to-fit.ts';
import { PinsTable } from './pins-table.tsx';
import './front.css';

interface FrontPageProps {
  readonly facts: SheetFacts;
  readonly identity: PageIdentity;
}

/** What is set at the machine. */
export function FrontPage({ facts, identity }: FrontPageProps): ReactNode {
  const { brief, input, candidate, target, place } = facts;
  const words = SHEET_WORDS;
  const [part] = brief.parts;
  const side = useRef<HTMLElement>(null);
  const smallerBy = useStepsToFit(side, facts);
  return (
    <SheetSide
      side={side}
      number={1}
      title={numbersInSentence(
        (texts) => words.frontTitle({ product: brief.product.name, size: candidate.size, ...texts }),
        {
          target: {
            text: quantityForReading(target.fill_mg, 'mg', { upToSignificantDigits: 5 }),
            number: 'target',
          },
        },
      )}
      about={words.about({
        ...{ filler: input.filler.name, method: DOSING_METHOD_NAMES[candidate.method] ?? candidate.method },
        ...{ blend: part.material.lot ?? part.name, shellLot: brief.shells[place.shellIndex]?.lot ?? '' },
      })}
      aside={
        <>
          <p>{identity.version}</p>
          <p>{[identity.status, identity.replaces].filter((text) => text !== '').join(' ')}</p>
          {identity.files !== '' && <p>{identity.files}</p>}
        </>
      }
      foot={[footOf(brief.product.name, identity), words.backIs]}
    >
      <section>
        <h3>
          <span className="sheet-number">1</span> {words.partsTitle}
        </h3>
        <PartsTable facts={facts} />
      </section>
      <section>
        <h3>
          <span className="sheet-number">2</span> {words.pinsTitle}
        </h3>
        <PaperDrawing facts={facts} smallerBy={smallerBy} />
        <PinsTable facts={facts} />
        <PinNotes facts={facts} />
      </section>
      <FirstWeights facts={facts} />
      <LookOut facts={facts} />
      <p className="sheet-check-line">
        <CheckLine /> {words.checkLine}
      </p>
    </SheetSide>
  );
}

/** From mark to mark 100 mm. No view box, no border: a browser puts those on whole pixels. */
function CheckLine(): ReactNode {
  return (
    <svg className="sheet-line-100" aria-hidden="true">
      <line x2="100mm" y1="1.5mm" y2="1.5mm" />
      <line y2="3mm" />
      <line x1="100mm" x2="100mm" y2="3mm" />
    </svg>
  );
}

function LookOut({ facts }: { readonly facts: SheetFacts }): ReactNode {
  const { suitability, prediction } = facts.candidate;
  const found = [...(suitability.grade === 'suitable' ? [] : suitability.reasons), ...prediction.warnings];
  if (found.length === 0) return null;
  return (
    <p className="sheet-look-out">
      <strong>{SHEET_WORDS.lookOut}:</strong> {found.map(findingSentence).join(' ')}
    </p>
  );
}

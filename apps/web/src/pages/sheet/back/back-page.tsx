import type { LimitCard } from '@fillwright/engine/design';
import { DESIGN_WORDS, SHEET_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { numbersInSentence } from '../../../numbers/index.ts';
import type { PageIdentity } from '../page-identity.ts';
import { Blank, footOf, SheetSide } from '../page-parts.tsx';
import { fixed, short, type SheetFacts } from '../sheet-facts.ts';
import { LimitAxis } from './limit-axis.tsx';
import './back.css';

interface BackPageProps {
  readonly facts: SheetFacts;
  readonly identity: PageIdentity;
  /** When and by whom it was printed. */
  readonly printed: string;
}

/** What is weighed against at the balance. */
export function BackPage({ facts, identity, printed }: BackPageProps): ReactNode {
  const { brief, candidate, details } = facts;
  const { card } = details;
  const words = SHEET_WORDS;
  return (
    <SheetSide
      number={2}
      title={words.backTitle}
      about={words.hangs({ product: brief.product.name, size: candidate.size })}
      aside={
        <>
          <p className="sheet-lot">{card?.tare.lot === undefined ? words.noLot : words.lotOnly(card.tare.lot)}</p>
          <p>
            {words.fromCapsule} <Blank width_mm={20} />
          </p>
        </>
      }
      foot={[footOf(brief.product.name, identity), words.frontIs]}
    >
      {card ? <Card facts={facts} card={card} /> : <p className="sheet-tare">{words.noTare}</p>}
      <section>
        <h3>{words.cautions}</h3>
        <ul className="sheet-cautions">
          {[...(brief.cautions ?? []), ...DESIGN_WORDS.usualCautions].map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </section>
      <Signatures identity={identity} printed={printed} />
    </SheetSide>
  );
}

function Card({ facts, card }: { readonly facts: SheetFacts; readonly card: LimitCard }): ReactNode {
  const { tare, sampleCount } = card;
  const words = SHEET_WORDS;
  const mean = fixed(tare.mean_mg);
  return (
    <>
      <p className="sheet-tare">
        <span>
          {tare.standardError_mg === undefined
            ? words.tareGuess(mean)
            : numbersInSentence(
                (texts) => words.tare({ mean, count: tare.shellCount, sd: fixed(tare.sd_mg), ...texts }),
                { error: { text: fixed(tare.standardError_mg, 2), number: 'tare-error' } },
              )}
        </span>
        <strong>{words.grossIs(mean)}</strong>
      </p>
      <LimitAxis facts={facts} card={card} />
      <div className="sheet-columns">
        <section>
          <h3>{words.eachSample(sampleCount)}</h3>
          <ol className="sheet-steps">
            {words.steps(sampleCount).map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
        </section>
        <Near facts={facts} card={card} />
      </div>
    </>
  );
}

function Near({ facts, card }: { readonly facts: SheetFacts; readonly card: LimitCard }): ReactNode {
  const { individualAction: action, tare, shellBlur_mg, isAlertAssumed, isSampleCountAssumed, target_mg } = card;
  const { meanAction_pct, individualAction_pct } = facts.brief.inProcess;
  const words = SHEET_WORDS;
  const around = (gross_mg: number): string =>
    `${fixed(gross_mg - shellBlur_mg)} and ${fixed(gross_mg + shellBlur_mg)}`;
  const alert_pct = (100 * (card.individualAlert.netHigh_mg - target_mg)) / target_mg;
  return (
    <section>
      <h3>{words.nearTitle}</h3>
      <p>
        {numbersInSentence(
          (texts) =>
            words.near({
              sd: fixed(tare.sd_mg),
              ...{ low: around(action.grossLow_mg), high: around(action.grossHigh_mg) },
              ...texts,
            }),
          { blur: { text: fixed(shellBlur_mg), number: 'shell-blur' } },
        )}
      </p>
      <p>
        {words.limitsFrom({
          mean: short(meanAction_pct),
          single: short(individualAction_pct),
          alert: short(alert_pct),
        })}
        {isAlertAssumed ? ` ${words.alertAssumed}` : ''}
        {isSampleCountAssumed ? ` ${words.countAssumed}` : ''}
      </p>
    </section>
  );
}

function Signatures({ identity, printed }: Pick<BackPageProps, 'identity' | 'printed'>): ReactNode {
  const { signatures, signColumns, meanings, signed } = SHEET_WORDS;
  return (
    <section className="sheet-signatures">
      <h3>{signatures}</h3>
      <table className="sheet-table">
        <thead>
          <tr>
            <th scope="col">{signColumns.meaning}</th>
            <th scope="col">{signColumns.name}</th>
            <th scope="col">{signColumns.date}</th>
          </tr>
        </thead>
        <tbody>
          {meanings.map((meaning) => (
            <tr key={meaning}>
              <th scope="row">{meaning}</th>
              <td />
              <td />
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        {signed(`${identity.version}, ${identity.marks}`)} {printed}
      </p>
    </section>
  );
}

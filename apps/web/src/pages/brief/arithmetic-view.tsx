import { ARITHMETIC_WORDS } from '@fillwright/words/en';
import { quantityForReading } from '@fillwright/words/numbers';
import { useMemo, type ReactElement } from 'react';
import { FieldFault } from '../../fields/index.ts';
import { arithmeticOf, type ContentShare } from './arithmetic.ts';
import { useBriefForm } from './form-context.ts';
import './arithmetic-view.css';

/** The arithmetic of the target as one would check it by hand, and a bar of what is in one capsule, to scale. */
export function ArithmeticView(): ReactElement {
  const { target } = useBriefForm().document;
  const arithmetic = useMemo(() => target && arithmeticOf(target), [target]);
  return (
    <section className="arithmetic" aria-label={ARITHMETIC_WORDS.title}>
      {!arithmetic && <p className="quiet">{ARITHMETIC_WORDS.untold}</p>}
      {arithmetic && !arithmetic.ok && <FieldFault>{arithmetic.refusal}</FieldFault>}
      {arithmetic?.ok && (
        <>
          <dl className="arithmetic-lines">
            {[arithmetic.fill, ...arithmetic.lines].map(({ what, steps, result }, index) => (
              <div className={index === 0 ? 'arithmetic-line arithmetic-fill' : 'arithmetic-line'} key={what}>
                <dt>{what}</dt>
                <dd className="arithmetic-steps">{steps}</dd>
                <dd className="arithmetic-result">{result}</dd>
              </div>
            ))}
          </dl>
          {arithmetic.shares.length > 0 && <ContentBar shares={arithmetic.shares} />}
        </>
      )}
    </section>
  );
}

function ContentBar({ shares }: { shares: readonly ContentShare[] }): ReactElement {
  return (
    <div className="arithmetic-content">
      <div className="arithmetic-bar" aria-hidden="true">
        {shares.map(({ what, mass_mg, kind }) => (
          <span key={what} data-kind={kind} style={{ flexGrow: mass_mg }} />
        ))}
      </div>
      <ul className="arithmetic-shares" aria-label={ARITHMETIC_WORDS.bar}>
        {shares.map(({ what, mass_mg, kind }) => (
          <li key={what}>
            <span className="arithmetic-sign" data-kind={kind} aria-hidden="true" />
            {what} {quantityForReading(mass_mg, 'mg', { decimals: 1 })}
          </li>
        ))}
      </ul>
    </div>
  );
}

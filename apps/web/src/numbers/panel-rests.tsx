import type { CaseResult, Entry } from '@fillwright/engine/catalogue';
import { OPEN_NUMBER_WORDS, VERDICT_WORDS } from '@fillwright/words/en';
import { plainNumber } from '@fillwright/words/numbers';
import type { ReactNode } from 'react';
import { equationLines } from './latex/equation-lines.ts';
import { parseLatex } from './latex/parse-latex.ts';
import { PanelEquation } from './panel-equation.tsx';
import { useCheckedCases } from './use-checked-cases.ts';

interface PanelRestsProps {
  readonly entry: Entry;
  /** What would narrow the interval. */
  readonly narrower: readonly string[];
}

/** What the open number rests on: entry, validity, check values recomputed here, sources, what would narrow it. */
export function PanelRests({ entry, narrower }: PanelRestsProps): ReactNode {
  const words = OPEN_NUMBER_WORDS;
  const whole = equationLines(parseLatex(entry.equation)).map((letters) => ({ letters, numbers: undefined }));
  return (
    <dl className="open-number-rests">
      {narrower.length === 0 ? null : (
        <>
          <dt>{words.narrower}</dt>
          <dd>
            {narrower.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </dd>
        </>
      )}
      <dt>{words.holds}</dt>
      <dd>{entry.validity}</dd>
      <dt>{words.rests}</dt>
      <dd>{entry.restsOn}</dd>
      <dt>{words.checked}</dt>
      <dd>
        <Checked entry={entry.id} />
      </dd>
      <dt>{words.source}</dt>
      <dd>
        {entry.sources.map(({ text, read }) => (
          <p key={text}>
            {text} <span className="quiet">({read})</span>
          </p>
        ))}
      </dd>
      <dt>{words.entry}</dt>
      <dd>
        {entry.title} <span className="quiet">({entry.id})</span>
        <details>
          <summary>{words.wholeEquation}</summary>
          <PanelEquation equation={{ lines: whole }} />
        </details>
      </dd>
    </dl>
  );
}

const MOST_CASES = 12;

function Checked({ entry }: { readonly entry: string }): ReactNode {
  const words = OPEN_NUMBER_WORDS;
  const cases = useCheckedCases(entry);
  if (cases === undefined) return words.checking;
  if (cases === 'not-loaded') return words.checksNotLoaded;
  if (cases.length === 0) return words.noChecks;
  const bad = cases.filter(({ verdict }) => verdict !== 'pass');
  const ordered = [...bad, ...cases.filter(({ verdict }) => verdict === 'pass')];
  return (
    <>
      <span className={bad.length === 0 ? '' : 'attention'}>
        {words.checks({ passed: cases.length - bad.length, all: cases.length })}
      </span>
      <details>
        <summary>{words.whichChecks}</summary>
        <ul>
          {ordered.slice(0, MOST_CASES).map((one) => (
            <Case key={one.id} one={one} />
          ))}
        </ul>
        {ordered.length > MOST_CASES ? words.moreChecks(ordered.length - MOST_CASES) : null}
      </details>
    </>
  );
}

function Case({ one }: { readonly one: CaseResult }): ReactNode {
  return (
    <li>
      {OPEN_NUMBER_WORDS.checkRow({
        ...{ verdict: VERDICT_WORDS[one.verdict], id: one.id },
        ...{ expected: shortText(one.expected), got: shortText(one.got) },
      })}
      <br />
      <span className="quiet">{one.source}</span>
    </li>
  );
}

/** Numbers of a case in a row, whatever its shape. */
function shortText(value: unknown): string {
  if (typeof value === 'number') return plainNumber(value, { upToSignificantDigits: 5 }).replaceAll('-', '−');
  if (Array.isArray(value)) return value.map(shortText).join(', ');
  if (typeof value === 'object' && value !== null) return Object.values(value).map(shortText).join('; ');
  return typeof value === 'string' ? value : OPEN_NUMBER_WORDS.leftOut;
}

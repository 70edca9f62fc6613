import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import { plainNumber } from '@fillwright/words/numbers';
import type { CSSProperties, ReactNode } from 'react';
import { SourceMark } from '../fields/index.ts';
import type { InputRow } from './input-rows.ts';
import type { NumberInterval } from './number-interval.ts';
import { MathSymbol } from './latex/math-symbol.tsx';
import { useLink } from './use-link.ts';

interface PanelInputsProps {
  readonly rows: readonly InputRow[];
  /** Left out where the number has none: then there is no column of shares. */
  readonly interval: NumberInterval | undefined;
}

/** The inputs of the open number: letter, value, interval, where it comes from, its share of the width. */
export function PanelInputs({ rows, interval }: PanelInputsProps): ReactNode {
  const [shown, other] = [rows.filter((row) => row.isInEquation), rows.filter((row) => !row.isInEquation)];
  return (
    <div className="open-number-inputs">
      <InputTable rows={shown} interval={interval} />
      {other.length === 0 ? null : (
        <details>
          <summary>{OPEN_NUMBER_WORDS.otherInputs(other.length)}</summary>
          <InputTable rows={other} interval={interval} />
        </details>
      )}
    </div>
  );
}

function InputTable({ rows, interval }: PanelInputsProps): ReactNode {
  const { columns } = OPEN_NUMBER_WORDS;
  return (
    <table>
      <thead>
        <tr>
          <th scope="col" colSpan={2}>
            {columns.input}
          </th>
          <th scope="col" className="open-number-figure">
            {columns.value}
          </th>
          <th scope="col" className="open-number-figure">
            {columns.interval}
          </th>
          <th scope="col">{columns.origin}</th>
          {interval ? <th scope="col">{columns.share}</th> : null}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.key}>
            <td className="open-number-symbol">
              {row.symbol === undefined ? null : <MathSymbol symbol={row.symbol} />}
            </td>
            <th scope="row">{row.title}</th>
            <td className="open-number-figure">{row.value}</td>
            <td className="open-number-figure quiet">{row.interval}</td>
            <td>
              <Origin row={row} />
            </td>
            {interval ? (
              <td>
                <Share row={row} interval={interval} />
              </td>
            ) : null}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Origin({ row }: { readonly row: InputRow }): ReactNode {
  const open = useLink();
  const { number, basis, words, known, key } = row;
  return (
    <>
      {words}
      {basis === undefined ? null : (
        <>
          {words === '' ? null : '; '}
          <SourceMark kind={basis} />
          {known === '' ? null : `, ${known}`}
        </>
      )}
      {number === undefined ? null : (
        <>
          {words === '' && basis === undefined ? null : '; '}
          <button
            type="button"
            className="number"
            onClick={() => {
              open(number);
            }}
          >
            {number === key ? OPEN_NUMBER_WORDS.computedOpens : OPEN_NUMBER_WORDS.opens}
          </button>
        </>
      )}
    </>
  );
}

/** Smaller shares are no reason to measure anything. */
const LEAST_SHARE = 0.01;

function Share({ row, interval }: { readonly row: InputRow; readonly interval: NumberInterval }): ReactNode {
  if (row.parameter === undefined)
    return row.number === undefined ? OPEN_NUMBER_WORDS.noShare : OPEN_NUMBER_WORDS.asThere;
  const share_frac = interval.shares.find(({ key }) => key === row.parameter)?.share_frac ?? 0;
  if (share_frac === 0) return OPEN_NUMBER_WORDS.noShare;
  if (share_frac < LEAST_SHARE) return OPEN_NUMBER_WORDS.smallShare;
  const text = `${plainNumber(100 * share_frac, { decimals: 0 })}\u202F%`;
  return (
    <span className="open-number-share" style={{ '--share': share_frac } as CSSProperties}>
      {text}
    </span>
  );
}

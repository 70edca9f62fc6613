import { FIELD_WORDS } from '@fillwright/words/en';
import { useState, type ReactElement } from 'react';
import { NumberField } from './number-field.tsx';
import type { NumberRange } from './number-range.ts';
import { TextField } from './text-field.tsx';
import { isSpread, type WrittenQuantity, type WrittenSpread } from './written-quantity.ts';

interface DetailsProps {
  readonly value: WrittenQuantity;
  readonly unit: string;
  readonly range: NumberRange;
  readonly canBeGuess: boolean;
  readonly isCompact: boolean;
  readonly help: string;
  readonly onCommit: (value: WrittenQuantity) => void;
}

const COUNT = { min: 1, max: 100_000 };

/** How a number was measured: its spread, number of values, method and date; or back to one value, or to the guess. */
export function QuantityDetails(props: DetailsProps): ReactElement {
  const { value, unit, range, onCommit } = props;
  const [part, setPart] = useState<WrittenSpread>({});
  const spread = isSpread(value) ? value : { ...meanOf(value), ...part };
  const change: Change = (key, to) => {
    const { [key]: _, ...rest } = spread;
    const next: WrittenSpread = to === undefined ? rest : { ...rest, [key]: to };
    if (isSpread(value) || isWhole(next)) onCommit(next);
    else setPart(next);
  };
  return (
    <>
      {props.isCompact && <p className="field-help">{props.help}</p>}
      <NumberField
        {...{ label: FIELD_WORDS.sd, help: FIELD_WORDS.sdHelp, unit, value: spread.sd }}
        range={{ min: 0, ...(range.max === undefined ? {} : { max: range.max }) }}
        onCommit={(to) => {
          change('sd', to);
        }}
      />
      {spread.from === undefined ? (
        <MeasuredFields spread={spread} onChange={change} />
      ) : (
        <FromField spread={spread} onChange={change} />
      )}
      {!isSpread(value) && <p className="field-help">{FIELD_WORDS.incomplete}</p>}
      <WaysBack {...props} />
    </>
  );
}

/** The mean of a quantity that is written as one number. */
function meanOf(value: number | string | undefined): WrittenSpread {
  return value === undefined || value === 'guess' ? {} : { mean: value };
}

function isWhole({ mean, sd, n }: WrittenSpread): boolean {
  return mean !== undefined && sd !== undefined && n !== undefined;
}

function WaysBack({ value, canBeGuess, onCommit }: DetailsProps): ReactElement {
  const one = isSpread(value) ? value.mean : undefined;
  return (
    <div className="quantity-field-ways">
      {one !== undefined && (
        <button
          type="button"
          onClick={() => {
            onCommit(one);
          }}
        >
          {FIELD_WORDS.toOne}
        </button>
      )}
      {canBeGuess && value !== undefined && value !== 'guess' && (
        <button
          type="button"
          onClick={() => {
            onCommit('guess');
          }}
        >
          {FIELD_WORDS.toGuess}
        </button>
      )}
    </div>
  );
}

type Change = (key: keyof WrittenSpread, to: number | string | undefined) => void;

function MeasuredFields({ spread, onChange }: { spread: WrittenSpread; onChange: Change }): ReactElement {
  return (
    <>
      <NumberField
        {...{ label: FIELD_WORDS.n, help: FIELD_WORDS.nHelp, unit: '1', range: COUNT, isWhole: true, step: 1 }}
        value={spread.n}
        onCommit={(to) => {
          onChange('n', to);
        }}
      />
      <TextField
        {...{ label: FIELD_WORDS.method, help: FIELD_WORDS.methodHelp, isOptional: true, value: spread.method }}
        onCommit={(to) => {
          onChange('method', to);
        }}
      />
      <TextField
        {...{ label: FIELD_WORDS.date, help: FIELD_WORDS.dateHelp, isOptional: true, value: spread.date }}
        onCommit={(to) => {
          onChange('date', to);
        }}
      />
    </>
  );
}

function FromField({ spread, onChange }: { spread: WrittenSpread; onChange: Change }): ReactElement {
  return (
    <TextField
      {...{ label: FIELD_WORDS.from, help: FIELD_WORDS.fromHelp, value: spread.from }}
      onCommit={(to) => {
        onChange('from', to);
      }}
    />
  );
}

import { FIELD_WORDS } from '@fillwright/words/en';
import { plainNumber } from '@fillwright/words/numbers';
import { useId, useState, type ReactElement } from 'react';
import { describedBy, FieldFrame, type FieldProps } from './field-frame.tsx';
import type { NumberKind } from './judged-number.ts';
import { QuantityDetails } from './quantity-details.tsx';
import { SourceMark } from './source-mark.tsx';
import { sourceText } from './source-text.ts';
import { useNumberDraft } from './use-number-draft.ts';
import { markOf, numberText, withNumber, type SourceMarkKind, type WrittenQuantity } from './written-quantity.ts';

export interface QuantityFieldProps extends FieldProps, NumberKind {
  readonly value: WrittenQuantity;
  /** How the file writes the number: `0.50`. */
  readonly source?: string | undefined;
  readonly onCommit: (value: WrittenQuantity) => void;
  /** A text that is no number: keep it in the draft; left out: it stays in the field until it is corrected. */
  readonly onRefused?: ((text: string) => void) | undefined;
  readonly step?: number | undefined;
  /** What counts while nothing is given; left out: the number has to be given. */
  readonly guess?: { readonly mean: number; readonly sd?: number } | undefined;
  /** Whether nothing may be given although what then counts is not known here. */
  readonly canBeGuess?: boolean;
  /** Left out: what the value itself says. */
  readonly mark?: SourceMarkKind;
  /** One row: mark as a bare circle, help only for screen readers and in what opens. */
  readonly isCompact?: boolean;
}

/** A number that was measured, learned or guessed. Its mark opens how it was measured. */
export function QuantityField(props: QuantityFieldProps): ReactElement {
  const { label, help, unit, range, value, guess, step, isCompact = false } = props;
  const canBeGuess = props.canBeGuess ?? guess !== undefined;
  const ownId = useId();
  const id = props.id ?? ownId;
  const [isOpen, setOpen] = useState(false);
  const refuse = props.onRefused;
  const { input, sentence } = useNumberDraft({
    ...{ shown: numberText(value, props.source), unit, range, isWhole: false, step },
    onNumber: (number) => {
      props.onCommit(number === undefined ? undefined : withNumber(value, number));
    },
    onRefused: refuse,
  });
  const fault = sentence ?? props.fault;
  const kind = props.mark ?? markOf(value);
  const about = sourceText(value, guess);
  const aside = (
    <button
      type="button"
      className="quantity-field-source"
      aria-expanded={isOpen}
      aria-controls={`${id}-details`}
      aria-label={`${FIELD_WORDS.marks[kind]}. ${FIELD_WORDS.open(label)}`}
      title={isCompact ? about : undefined}
      onClick={() => {
        setOpen(!isOpen);
      }}
    >
      <SourceMark kind={kind} isBare={isCompact} />
    </button>
  );
  const below = (
    <div id={`${id}-details`} className="quantity-field-details" hidden={!isOpen}>
      {isOpen && <QuantityDetails {...{ value, unit, range, canBeGuess, isCompact, help, onCommit: props.onCommit }} />}
    </div>
  );
  return (
    <FieldFrame {...{ id, label, unit, help, fault, about, isCompact, aside, below }} isOptional={canBeGuess}>
      <input
        className="field-input field-number"
        placeholder={guess && plainNumber(guess.mean, { upToSignificantDigits: 3 })}
        {...input}
        {...describedBy({ id, unit, help, fault })}
      />
    </FieldFrame>
  );
}

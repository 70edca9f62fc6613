import { useId, type ReactElement } from 'react';
import { describedBy, FieldFrame, type FieldProps } from './field-frame.tsx';
import type { NumberKind } from './judged-number.ts';
import { useNumberDraft } from './use-number-draft.ts';
import { numberText } from './written-quantity.ts';

export interface NumberFieldProps extends FieldProps, NumberKind {
  /** The number; a text is what was refused and kept all the same. */
  readonly value: number | string | undefined;
  /** How the file writes the number: `0.50`. */
  readonly source?: string | undefined;
  readonly step?: number | undefined;
  /** What counts while nothing is given. */
  readonly placeholder?: string | undefined;
  readonly onCommit: (value: number | undefined) => void;
  readonly onRefused?: ((text: string) => void) | undefined;
}

/** A number without a spread: a claim, a limit, a count. */
export function NumberField(props: NumberFieldProps): ReactElement {
  const { label, help, unit, range, isWhole = false, isOptional = false, isStacked = false } = props;
  const ownId = useId();
  const id = props.id ?? ownId;
  const { input, sentence } = useNumberDraft({
    ...{ shown: numberText(props.value, props.source), unit, range, isWhole, step: props.step },
    ...{ onNumber: props.onCommit, onRefused: props.onRefused },
  });
  const fault = sentence ?? props.fault;
  return (
    <FieldFrame
      id={id}
      label={label}
      unit={unit}
      help={help}
      fault={fault}
      isOptional={isOptional}
      isStacked={isStacked}
    >
      <input
        className="field-input field-number"
        placeholder={props.placeholder}
        {...input}
        {...describedBy({ id, unit, help, fault })}
      />
    </FieldFrame>
  );
}
